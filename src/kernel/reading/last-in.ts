/** The last item of a list, undefined if it is empty. Several supported browsers lack `at(-1)`. */
export const lastIn = <Item>(list: readonly Item[]): Item | undefined => list[list.length - 1];
