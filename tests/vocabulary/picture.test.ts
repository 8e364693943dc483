// How a picture stands among the words: a figure of its own, and nothing of the words around it lost.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { drawProse } from '../../src/vocabulary/prose.ts';
import type { Surroundings } from '../../src/vocabulary/tags.ts';

const FILES: Record<string, { name: string; width: number; height: number }[]> = {
  'wide.jpg': [
    { name: 'wide-960-aa.jpg', width: 960, height: 720 },
    { name: 'wide-480-bb.jpg', width: 480, height: 360 },
  ],
  'tall.jpg': [{ name: 'tall-300-cc.jpg', width: 300, height: 400 }],
};
const around = {
  base: '/club/',
  leads: () => true,
  picture: (url) => (FILES[url] ? { files: FILES[url] } : null),
  dayOf: () => null,
  window: () => null,
  contact: () => null,
  caution: () => null,
} as Partial<Surroundings> as Surroundings;
const draw = (body: string): string => {
  const { opening, rest } = drawProse(body, around);
  return (opening + rest).replaceAll('\n', '');
};

const wide = (lazy: boolean, caption = ''): string =>
  `<figure class="picture"><img src="/club/pictures/wide-960-aa.jpg" srcset="/club/pictures/wide-480-bb.jpg 480w, /club/pictures/wide-960-aa.jpg 960w" sizes="(min-width: 900px) 696px, calc(100vw - 48px)" width="960" height="720" alt="Capped brood"${lazy ? ' loading="lazy"' : ''} decoding="async">${caption}</figure>`;
const TALL =
  '<figure class="picture tall"><img src="/club/pictures/tall-300-cc.jpg" width="300" height="400" alt="A cell" loading="lazy" decoding="async"></figure>';

for (const [name, body, html] of [
  ['alone, before every heading: fetched at once', '![Capped brood](wide.jpg)', wide(false)],
  [
    'a second one, or one below a heading, when it comes near',
    '![Capped brood](wide.jpg)\n\n![A cell](tall.jpg)\n\n## Then\n\n![Capped brood](wide.jpg)',
    `${wide(false)}${TALL}<section class="part-of-page"><h2 id="then">Then</h2>${wide(true)}</section>`,
  ],
  [
    'none before the heading',
    'Words.\n\n## Then\n\n![A cell](tall.jpg)\n\nMore.',
    `<p>Words.</p><section class="part-of-page"><h2 id="then">Then</h2>${TALL}<p>More.</p></section>`,
  ],
  ['words below it', '![Capped brood](wide.jpg "Seen in *May*, 5 < 6")', wide(false, '<figcaption>Seen in *May*, 5 &#x3C; 6</figcaption>')],
  [
    'on a line between lines',
    'Before *it*.\n![Capped brood](wide.jpg)\nBehind it.',
    `<p>Before <em>it</em>.</p>${wide(false)}<p>Behind it.</p>`,
  ],
  ['after a forced end of line', 'Before.\\\n![Capped brood](wide.jpg)', `<p>Before.</p>${wide(false)}`],
  ['two on one line', '![Capped brood](wide.jpg) ![A cell](tall.jpg)', `${wide(false)}${TALL}`],
  ['in a list', '- One\n\n  ![Capped brood](wide.jpg)\n\n- Two', `<ul><li><p>One</p>${wide(false)}</li><li><p>Two</p></li></ul>`],
  ['in a tight list', '1. One\n   ![Capped brood](wide.jpg)\n2. Two', `<ol><li>One${wide(false)}</li><li>Two</li></ol>`],
  ['not shown: the words stay together', 'Before.\n![Not here](lost.jpg)\nBehind.', '<p>Before.Behind.</p>'],
  ['not shown, alone: nothing', 'Before.\n\n![Not here](lost.jpg)', '<p>Before.</p>'],
] as const) {
  test(`a picture ${name}`, () => assert.equal(draw(body), html));
}

test('a picture below a step stands in its reason, outside the label', () => {
  const html = draw('## Pause\n\n- [ ] Look for eggs <Task id="eggs" />\n\n  ![A cell](tall.jpg)\n');
  assert.ok(html.includes(`</label><div class="reason">${TALL}</div></li>`), html);
});
