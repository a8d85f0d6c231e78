/**
 * Trade terms as technicians of six languages type them, one term a row: first the English words that are searched for
 * instead, then what people type, separated by commas. Marks on letters are optional when somebody types: `ue`, `u` and
 * `ü` are one. An ending of up to three letters may follow a word of five letters or more.
 */
export const foreignWords = `
English | German | Spanish | French | Polish | Turkish | Chinese
overcurrent trip | Überstrom, Überstromabschaltung, Überstromauslösung, Überstromfehler | sobrecorriente, sobreintensidad | surintensité | przetężenie, przekroczenie prądu | aşırı akım, aşırı akım hatası | 过流, 过电流, 过流报警, 过电流报警, 过流故障
overload trip | Überlast, Überlastung | sobrecarga | surcharge | przeciążenie, przeciążenia | aşırı yük | 过载, 过负荷
short circuit | Kurzschluss, Kurzschluß | cortocircuito, corto circuito | court-circuit | zwarcie, zwarcia | kısa devre | 短路
ground fault | Erdschluss, Masseschluss, Körperschluss | falla a tierra, fallo a tierra, fuga a tierra, defecto a tierra, derivación a tierra | défaut de terre, défaut à la terre, défaut d'isolement, fuite à la terre | doziemienie, zwarcie doziemne, zwarcie do ziemi | toprak hatası, toprak kaçağı, gövdeye kaçak | 接地故障, 对地短路, 接地短路
leakage current | Ableitstrom, Leckstrom | corriente de fuga | courant de fuite | prąd upływu | kaçak akım | 漏电, 漏电流, 泄漏电流
insulation resistance | Isolationswiderstand | resistencia de aislamiento, aislamiento | résistance d'isolement, isolement | rezystancja izolacji, rezystancji izolacji, izolacja, izolacji | izolasyon direnci, yalıtım direnci, izolasyon, yalıtım | 绝缘电阻, 绝缘阻值, 绝缘
insulation test | Isolationsmessung, Isolationsprüfung, Isolationstest, Isolation prüfen, Isolation messen, Motor Isolation | prueba de aislamiento, medición de aislamiento | mesure d'isolement, test d'isolement, essai d'isolement, contrôle d'isolement | pomiar izolacji, pomiar rezystancji izolacji, badanie izolacji | izolasyon testi, izolasyon ölçümü, yalıtım testi | 绝缘测试, 绝缘测量, 绝缘检测, 测绝缘
insulation tester | Isolationsmessgerät, Isolationsprüfer, Isolationstester | medidor de aislamiento, megóhmetro, comprobador de aislamiento | contrôleur d'isolement, mégohmmètre | miernik izolacji, miernik rezystancji izolacji, megaomomierz | izolasyon test cihazı, izolasyon ölçer, megaohmmetre | 兆欧表, 绝缘电阻表, 绝缘测试仪, 摇表
test voltage | Prüfspannung, Messspannung | tensión de prueba, tensión de ensayo, voltaje de prueba | tension d'essai, tension de test | napięcie probiercze, napięcie pomiarowe | test gerilimi, deney gerilimi, test voltajı | 测试电压, 试验电压
winding resistance | Wicklungswiderstand | resistencia de bobinado, resistencia del bobinado, resistencia de devanado, resistencia del devanado | résistance d'enroulement, résistance des enroulements, résistance de bobinage | rezystancja uzwojenia, rezystancja uzwojeń | sargı direnci, bobin direnci | 绕组电阻, 线圈电阻, 绕组阻值
winding | Wicklung, Motorwicklung | bobinado, devanado | bobinage, enroulement | uzwojenie, uzwojenia | sargı | 绕组, 线圈
shorted turns | Windungsschluss | cortocircuito entre espiras, espiras en cortocircuito | court-circuit entre spires | zwarcie zwojowe, zwarcie międzyzwojowe | sarımlar arası kısa devre | 匝间短路
output stage | Endstufe, Leistungsteil | etapa de potencia, etapa de salida | étage de puissance, étage de sortie | stopień mocy, stopień wyjściowy, końcówka mocy | güç katı, çıkış katı | 逆变桥, 输出级, 功率级
power module | Leistungsmodul, IGBT-Modul | módulo de potencia | module de puissance | moduł mocy | güç modülü | 功率模块
servo drive | Servoregler, Servoverstärker, Antriebsregler, Servoumrichter, Umrichter, Frequenzumrichter, Regler | variador, variador de frecuencia, servoamplificador, servoaccionamiento | variateur, variateur de vitesse, servovariateur | falownik, serwowzmacniacz, serwonapęd | sürücü, servo sürücü | 伺服驱动器, 驱动器, 伺服放大器, 变频器
motor | Servomotor, Motoren | servomotor | moteur, servomoteur | silnik, serwosilnik, serwomotor | servo motor | 伺服电机, 电机, 马达, 电动机
motor cable | Motorkabel, Motorleitung, Leistungskabel | cable del motor, cable de motor, cable de potencia | câble moteur, câble du moteur, câble de puissance | kabel silnika, kabel silnikowy, przewód silnika, przewód silnikowy | motor kablosu, güç kablosu | 电机电缆, 电机线, 动力线, 动力电缆
cable | Kabel, Leitung | cables | câble, câbles | kabel, przewód | kablo, kablosu | 电缆, 线缆
encoder | Geber, Drehgeber, Winkelgeber | codificador, encóder | codeur | enkoder, enkodera | enkoder, kodlayıcı | 编码器
encoder cable | Geberkabel, Geberleitung | cable del encoder, cable de encoder, cable del codificador | câble codeur, câble du codeur | kabel enkodera, przewód enkodera | enkoder kablosu | 编码器电缆, 编码器线
holding brake | Haltebremse, Motorbremse, Bremse | freno, freno de retención, freno de motor, freno del motor | frein, frein de maintien, frein moteur | hamulec, hamulca, hamulec postojowy, hamulec silnika | fren, freni, frenin, tutma freni, motor freni | 抱闸, 制动器, 刹车
brake not releasing | Bremse löst nicht, Bremse öffnet nicht, Bremse lüftet nicht, Bremse geht nicht auf, Bremse klemmt | freno no abre, freno no se abre, freno no libera, freno no se libera, freno no suelta, freno bloqueado | frein bloqué, frein collé, frein ne s'ouvre pas, frein ne se desserre pas, frein ne desserre pas | hamulec nie zwalnia, hamulec się nie zwalnia, hamulec nie puszcza, hamulec zablokowany | fren açmıyor, fren açılmıyor, fren bırakmıyor, fren sıkıştı | 抱闸打不开, 抱闸不打开, 抱闸不松, 抱闸没打开, 制动器不释放, 刹车打不开
braking resistor | Bremswiderstand | resistencia de frenado | résistance de freinage | rezystor hamujący, rezystor hamowania | fren direnci, frenleme direnci | 制动电阻
DC bus | Zwischenkreis, Zwischenkreisspannung | bus de continua, bus CC, circuito intermedio | bus continu, bus CC, circuit intermédiaire | obwód pośredni, szyna DC | DC bara, ara devre | 直流母线, 母线电压, 母线
bus capacitor | Kondensator, Kondensatoren, Zwischenkreiskondensator | condensador, condensadores | condensateur, condensateurs | kondensator, kondensatory | kondansatör | 母线电容, 电容器, 电容
discharge | Entladung, entladen, Entladezeit | descarga, descargar, tiempo de descarga | décharge, décharger, temps de décharge | rozładowanie, rozładować, czas rozładowania | deşarj, deşarj süresi, boşalma süresi | 放电, 放电时间
residual voltage | Restspannung | tensión residual, voltaje residual | tension résiduelle | napięcie szczątkowe | artık gerilim | 残余电压, 残压
proving dead | Spannungsfreiheit, spannungsfrei | ausencia de tensión | absence de tension | brak napięcia, stan beznapięciowy | gerilim yokluğu, gerilim yok | 验电, 无电压
lockout | Freischalten, Wiedereinschalten | bloqueo y etiquetado, consignación, bloqueo | consignation, cadenassage, condamnation | zabezpieczenie przed ponownym załączeniem, blokada i oznakowanie | kilitleme, kilitleme ve etiketleme | 上锁挂牌, 挂牌上锁, 停电挂牌
emergency stop | Not-Halt, Not-Aus, Notaus | parada de emergencia, paro de emergencia | arrêt d'urgence | wyłącznik awaryjny, zatrzymanie awaryjne | acil stop, acil durdurma | 急停
vertical axis | Vertikalachse, vertikale Achse, hängende Achse, Hubachse, Z-Achse | eje vertical, eje Z | axe vertical, axe Z | oś pionowa, oś Z | dikey eksen, Z ekseni | 垂直轴
protective conductor | Schutzleiter, Erdung | conductor de protección, puesta a tierra, toma de tierra | conducteur de protection, mise à la terre | przewód ochronny, uziemienie | koruma iletkeni, topraklama, toprak hattı | 保护接地, 接地线, 地线, 接地
screen | Schirm, Schirmung, Abschirmung, Kabelschirm | pantalla, apantallamiento, blindaje, malla | blindage, tresse | ekran, ekranowanie | ekran, ekranlama, blendaj | 屏蔽, 屏蔽层
connector | Stecker, Steckverbinder | conector, conectores | connecteur, connecteurs | złącze, złącza, wtyczka | konnektör, fiş | 接头, 插头, 连接器, 接插件
cable carrier | Schleppkette | cadena portacables, portacables | chaîne porte-câbles | prowadnik kablowy, prowadnica kabli, łańcuch kablowy | kablo zinciri, hareketli kablo kanalı | 拖链
multimeter | Vielfachmessgerät, Messgerät | multímetro, polímetro | multimètre | multimetr, miernik | multimetre, ölçü aleti | 万用表
phase sequence | Drehfeld, Phasenfolge, Phasen vertauscht, Drehrichtung | secuencia de fases, orden de fases, fases invertidas, fases cruzadas | ordre des phases, phases inversées | kolejność faz, zamienione fazy | faz sırası | 相序, 相序接反, 相序错误
alarm code | Fehlercode, Fehlermeldung, Fehlernummer, Alarmnummer, Störmeldung | código de error, código de alarma, código de fallo | code d'erreur, code défaut, code d'alarme | kod błędu, kod alarmu, komunikat błędu | hata kodu, alarm kodu | 报警代码, 故障代码, 报警号, 错误代码
diode test | Diodentest, Diodenprüfung, Diodenmessung | prueba de diodos, prueba de diodo | test de diode, test diode | test diody, pomiar diody | diyot testi, diyot ölçümü | 二极管测试, 二极管档
moisture | Feuchtigkeit, Feuchte, Betauung, Kondenswasser | humedad, condensación | humidité | wilgoć, wilgoci, zawilgocenie | nem, rutubet, yoğuşma | 潮湿, 受潮, 凝露, 进水
bearing | Lager, Kugellager, Lagerschaden | rodamiento, cojinete | roulement | łożysko, łożyska | rulman | 轴承
ball screw | Kugelgewindetrieb | husillo de bolas | vis à billes | śruba kulowa | bilyalı vida | 滚珠丝杠, 丝杠
fuse | Sicherung, Sicherungen | fusible, fusibles | fusible, fusibles | bezpiecznik, bezpieczniki | sigorta | 保险丝, 熔断器
arc flash | Störlichtbogen, Lichtbogen | arco eléctrico | arc électrique | łuk elektryczny | elektrik arkı | 电弧, 弧闪
protective equipment | Schutzausrüstung, PSA | equipo de protección, EPI | équipement de protection, EPI | środki ochrony | koruyucu donanım, KKD | 防护用品, 劳保
gloves | Handschuhe | guantes | gants | rękawice | eldiven | 绝缘手套, 手套
spare part order | Ersatzteil, Ersatzteile | repuesto, recambio, repuestos | pièce de rechange, pièces de rechange | część zamienna, części zamienne | yedek parça | 备件
`;

/** Small words of these languages, which say nothing about the subject. Beside a trade term they are left out. */
export const foreignSmallWords =
  'der die das den dem des ein eine einen und oder ist sind im am zu zum nicht mit von auf wie was ' +
  'el la los las un una de del al en y o no es se con por para que como ' +
  'le les du d l une et est ne pas sur avec pour au aux dans ' +
  'i w z na do nie jest sie jak co po od za ' +
  've bir bu mi mu ile icin ne var yok';
