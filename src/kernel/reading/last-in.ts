/** The last item of a list, undefined where there is none. Several browsers that the site is made for lack `at(-1)`. */
export const lastIn = <Item>(list: readonly Item[]): Item | undefined => list[list.length - 1];
