/** An address of the site, given from its root ("/tables/"), below whatever folder a host serves the site from. */
export function href(path: string, base: string = import.meta.env.BASE_URL): string {
  return base.replace(/\/$/, '') + path;
}
