import { href } from '../ui/href.ts';

/** What an operating system needs to install the site like an app; the addresses include the base path. */
export function GET(): Response {
  const icon = (file: string, sizes: string, purpose: string) => ({ src: href(`/icons/${file}`), sizes, purpose });
  const manifest = {
    name: 'Overcurrent Fieldbook',
    short_name: 'Fieldbook',
    description: 'Measure and judge drive, cable and motor after a servo drive has tripped on overcurrent.',
    lang: 'en',
    id: href('/'),
    start_url: href('/'),
    scope: href('/'),
    display: 'minimal-ui',
    background_color: '#fdfcf8',
    theme_color: '#0b5375',
    icons: [
      { ...icon('fieldbook-192.png', '192x192', 'any'), type: 'image/png' },
      { ...icon('fieldbook-512.png', '512x512', 'any'), type: 'image/png' },
      { ...icon('fieldbook-maskable-512.png', '512x512', 'maskable'), type: 'image/png' },
    ],
    shortcuts: [
      { name: 'Start or continue a visit', url: href('/visit/') },
      { name: 'Calculators', url: href('/calculators/') },
    ],
  };
  return new Response(JSON.stringify(manifest), { headers: { 'Content-Type': 'application/manifest+json' } });
}
