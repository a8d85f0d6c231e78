/** For plain tsc, which can't read .astro files; `astro check` sees their real types. */
declare module '*.astro' {
  const component: import('astro/runtime/server/index.js').AstroComponentFactory;
  export default component;
}
