import type { Page } from 'playwright-core';

/** Collects what must not happen on any page. The list fills as the page lives. */
export function watch(page: Page, host: string): string[] {
  const problems: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') problems.push(`console: ${message.text()} (${message.location().url})`);
  });
  page.on('pageerror', (error) => problems.push(`thrown: ${error.message}`));
  page.on('request', (request) => {
    const { protocol, host: asked } = new URL(request.url());
    if (/^(https?|wss?):$/.test(protocol) && asked !== host) problems.push(`asked another host: ${request.url()}`);
  });
  page.on('requestfailed', (request) => {
    const reason = request.failure()?.errorText ?? '';
    // A page that is left while it loads breaks its requests off itself.
    if (reason !== 'net::ERR_ABORTED') problems.push(`failed: ${request.url()} ${reason}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) problems.push(`status ${response.status()}: ${response.url()}`);
  });
  return problems;
}
