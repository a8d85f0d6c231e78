/** A record of the Lift axis at the Marrow Bay Glassworks; place and figures are invented. */
export const inventedRecord = `Date\tInsulation\tWinding temperature
2014-05-12\t1.9 GΩ\t24 °C
2015-05-18\t>1 GΩ\t22 °C
2016-05-09\t1.55 GΩ\t26 °C
2017-05-15\t1.8 GΩ\t21 °C
2018-05-14\t1.3 GΩ\t25 °C
2019-05-20\t1.25 GΩ\t23 °C
2020-06-08\t980 MΩ\t27 °C
2021-05-17\tOL\t24 °C
2022-05-16\t1.05 GΩ\t22 °C
2023-05-15\t310 MΩ\t25 °C
2024-05-13\t820 MΩ\t24 °C
2025-05-19\t760 MΩ\t23 °C
`;
