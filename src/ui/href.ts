/** An address of the site, given from its root ("/tables/"), with the base path of the host. */
export function href(path: string, base: string = import.meta.env.BASE_URL): string {
  return base.replace(/\/$/, '') + path;
}
