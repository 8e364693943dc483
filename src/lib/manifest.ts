/* Web app manifest (W3C): name, icons, start page, and three shortcuts. */
import * as text from './feeds.en.ts';
import type { Club } from '../schemas/club.ts';

const SHORTCUTS = [
  [text.shortcuts.now, ''],
  [text.shortcuts.checklists, 'lists/'],
  [text.shortcuts.miteCount, 'work-it-out/mite-count/'],
] as const;

/** `empty` are the paths of rooms that this almanac does not have. */
export function manifest(club: Pick<Club, 'name' | 'almanac' | 'language'>, base: string, empty: ReadonlySet<string>): string {
  return `${JSON.stringify(
    {
      id: base,
      name: club.almanac,
      short_name: text.shortName,
      description: text.description(club.name),
      lang: club.language,
      start_url: base,
      scope: base,
      display: 'standalone',
      background_color: '#faf7ee',
      theme_color: '#faf7ee',
      icons: [
        { src: `${base}icon.svg`, sizes: 'any', type: 'image/svg+xml' },
        { src: `${base}icon-192.png`, sizes: '192x192', type: 'image/png' },
        { src: `${base}icon-512.png`, sizes: '512x512', type: 'image/png' },
        { src: `${base}icon-512.png`, sizes: '512x512', type: 'image/png', purpose: 'maskable' },
      ],
      shortcuts: SHORTCUTS.filter(([, place]) => !empty.has(place)).map(([name, place]) => ({ name, url: base + place })),
    },
    null,
    2,
  )}\n`;
}
