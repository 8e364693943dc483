// Each rule of rules.ts detects its fault: faults are planted in real pages, one at a time, and must be reported.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser, Page } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';
import { axe } from './look.ts';
import { paleEdges, paleLetters } from './edges.ts';
import { hiddenFocus } from './focus.ts';
import { brokenWords, paleText, sideways, smallTargets, smallText, waitsForScript, wrongOnPaper } from './rules.ts';
import { cutText, moving } from './spacing.ts';
import { open } from './visit.ts';

let site: Site;
let browser: Browser;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
});

/** A list with steps, which has boxes, links, marks and buttons. */
const list = '/lists/package-arrival/';

/** The planted markup, and the expected report. */
const planted: { fault: string; html?: string; css?: string; rule: () => string[]; tells: RegExp; print?: boolean }[] = [
  {
    fault: 'a block that is too wide',
    html: '<p style="width: 500px">wide</p>',
    rule: sideways,
    tells: /wide in a window of 390 px, by <p> "wide"/,
  },
  {
    fault: 'a word that cannot break',
    html: `<p style="overflow-wrap: normal">${'x'.repeat(90)}</p>`,
    rule: sideways,
    tells: /px wide in a window/,
  },
  {
    fault: 'a button too narrow for its word',
    html: '<button type="button" style="width: 48px; padding: 0; overflow-wrap: anywhere">Searching</button>',
    rule: brokenWords,
    tells: /^"Searching" of "Searching" is broken in two$/,
  },
  {
    fault: 'a link whose words fall apart',
    html: '<a href="/" style="display: inline-flex">Read more on <span>wax</span></a>',
    rule: brokenWords,
    tells: /^"Read more on wax" falls apart at "Read more on"$/,
  },
  { fault: 'small letters', html: '<p style="font-size: 15px">hard to read</p>', rule: smallText, tells: /^"hard to read" at 15 px$/ },
  {
    fault: 'letters of a picture drawn small',
    html: '<svg viewBox="0 0 200 40" width="100"><text y="20" style="font-size: 20px">tiny</text></svg>',
    rule: smallText,
    tells: /^"tiny" at 10 px$/,
  },
  {
    fault: 'pale letters',
    html: '<p style="color: #777">pale</p>',
    rule: paleText,
    tells: /^"pale" in rgb\(119, 119, 119\) on rgb\(250, 247, 238\) is 4\.2 to 1$/,
  },
  {
    fault: 'pale letters on a ground of their own',
    html: '<div style="background: #ccc"><p style="color: #444">pale</p></div>',
    rule: paleText,
    tells: /^"pale" in .* is 6\.\d to 1$/,
  },
  {
    fault: 'a low button',
    html: '<button style="min-height: 0; height: 40px">Low</button>',
    rule: smallTargets,
    tells: /<button> "Low" is 40 px high, under 48/,
  },
  {
    fault: 'a narrow button',
    html: '<button style="min-width: 0; width: 30px; padding: 0">N</button>',
    rule: smallTargets,
    tells: /<button> "N" is 30 px wide, under 48/,
  },
  {
    fault: 'a link by itself that is low',
    html: '<p><a href="/">alone</a></p>',
    rule: smallTargets,
    tells: /<a> "alone" is \d+ px high, under 48/,
  },
  {
    fault: 'a low step',
    css: '.step { height: 50px !important; min-height: 0 !important }',
    rule: smallTargets,
    tells: /is \d+ px high, under 64/,
  },
  {
    fault: 'focus that does not show',
    css: ':focus-visible { outline: none !important }',
    rule: hiddenFocus,
    tells: /does not show its focus/,
  },
  { fault: 'focus under the bar', css: 'html { scroll-padding: 0 !important }', rule: hiddenFocus, tells: /is focused under <nav> "Now/ },
  {
    fault: 'focus under the line that stays above a list',
    css: 'html { scroll-padding-top: 0 !important }',
    rule: hiddenFocus,
    tells: /is focused under <section> "Emergency/,
  },
  {
    fault: 'focus in the colour of the paper',
    css: ':focus-visible { outline-color: #f0e2b6 !important }',
    rule: hiddenFocus,
    tells: /shows its focus in rgb\(240, 226, 182\) on rgb\(250, 247, 238\)/,
  },
  {
    fault: 'a button whose edge is pale',
    html: '<button type="button" style="border-color: #999">Pale</button>',
    rule: paleEdges,
    tells: /^the edge of <button> "Pale" in rgb\(153, 153, 153\) on rgb\(250, 247, 238\) is 2\.7 to 1$/,
  },
  {
    fault: 'a status without a shape',
    html: '<b class="status act">Act</b>',
    css: '.status::before { content: none !important }',
    rule: paleEdges,
    tells: /^<b> "Act" has no shape$/,
  },
  { fault: 'a status without a word', html: '<b class="status act"></b>', rule: paleEdges, tells: /^a status has no word$/ },
  {
    fault: 'pale letters in a picture',
    html: '<svg viewBox="0 0 200 40" width="200"><rect width="200" height="40" fill="#555"/><text y="30" style="font-size: 20px">dim</text></svg>',
    rule: paleLetters,
    tells: /^"dim" in rgb\(0, 0, 0\) on rgb\(85, 85, 85\) is 2\.8 to 1$/,
  },
  {
    fault: 'focus out of sight',
    html: '<a href="/" style="position: absolute; left: -500px">away</a>',
    rule: hiddenFocus,
    tells: /"away" is focused out of sight/,
  },
  {
    fault: 'a place of its own in the order of Tab',
    html: '<a href="/" tabindex="3">first</a>',
    rule: hiddenFocus,
    tells: /"first" has a place of its own/,
  },
  {
    fault: 'letters cut by their frame',
    html: '<p style="height: 20px; overflow: hidden">first line<br>second line</p>',
    rule: cutText,
    tells: /^"second line" is cut by <p class="">$/,
  },
  {
    fault: 'letters over others',
    html: '<p style="height: 20px; margin: 0">first line<br>second line</p><p style="margin: 0">next to it</p>',
    rule: cutText,
    tells: /"second line" lies over "next to it"|"next to it" lies over "second line"/,
  },
  {
    fault: 'letters out of the window',
    html: '<p style="white-space: nowrap">so long that it does not fit into a window of this width</p>',
    rule: cutText,
    tells: /reaches out of the window$/,
  },
  { fault: 'what changes by and by', css: 'a { transition: color 0.3s }', rule: moving, tells: /^<a> changes by and by in 0\.3s$/ },
  {
    fault: 'what moves',
    css: '@keyframes turn { to { rotate: 1turn } } h1 { animation: turn 1s infinite }',
    rule: moving,
    tells: /^<h1> has the animation turn$/,
  },
  { fault: 'no title', css: 'h1 { display: none }', rule: waitsForScript, tells: /^no title$/ },
  { fault: 'no text', css: '.text { display: none } .sidebar { display: none }', rule: waitsForScript, tells: /^0 letters of text$/ },
  { fault: 'no way to the parts', css: '.bottom-nav { display: none }', rule: waitsForScript, tells: /^0 of five parts$/ },
  {
    fault: 'a button that does nothing',
    html: '<button type="button">Do it</button>',
    rule: waitsForScript,
    tells: /^a button "Do it" that does nothing$/,
  },
  {
    fault: 'a heading over nothing',
    html: '<section><h2>Later</h2><p hidden>by script</p></section>',
    rule: waitsForScript,
    tells: /^a heading "Later" with nothing under it$/,
  },
  {
    fault: 'pale print',
    html: '<p style="color: #999">pale</p>',
    print: true,
    rule: wrongOnPaper,
    tells: /^"pale" is printed in rgb\(153, 153, 153\)$/,
  },
  {
    fault: 'print on a dark ground',
    html: '<p style="background: #ddd">dark</p>',
    print: true,
    rule: wrongOnPaper,
    tells: /^"dark" is printed on a dark ground$/,
  },
  {
    fault: 'small print',
    html: '<p style="font-size: 11px">small</p>',
    print: true,
    rule: wrongOnPaper,
    tells: /^"small" is printed at 11px$/,
  },
  {
    fault: 'a box printed with its tick',
    css: '.step input { background-image: linear-gradient(#000, #000) !important }',
    print: true,
    rule: wrongOnPaper,
    tells: /is not an empty box$/,
  },
  {
    fault: 'a step cut in two',
    css: '.step { break-inside: auto !important }',
    print: true,
    rule: wrongOnPaper,
    tells: /may be cut in two$/,
  },
  { fault: 'a printed button', html: '<button>Do it</button>', print: true, rule: wrongOnPaper, tells: /^<button> "Do it" is printed$/ },
  {
    fault: 'a closed section',
    html: '<details><summary>More</summary><p>hidden words</p></details>',
    css: 'details::details-content { content-visibility: hidden !important }',
    print: true,
    rule: wrongOnPaper,
    tells: /^a closed section is not printed$/,
  },
];

assert.ok(planted.length > 20);
for (const { fault, html, css, rule, tells, print } of planted) {
  test(`${rule.name} sees ${fault}`, { tag: '@slow' }, async () => {
    const { page, context } = await open(browser, site.at(list), { javaScriptEnabled: rule !== waitsForScript, bypassCSP: true });
    if (print) await page.emulateMedia({ media: 'print' });
    // What a fold holds is under its heading, and needs no script.
    if (rule === waitsForScript) await page.evaluate(() => document.querySelectorAll('details').forEach((fold) => (fold.open = true)));
    assert.deepEqual(await page.evaluate(rule), [], 'the page as it is');
    await plant(page, html, css);
    const told = await page.evaluate(rule);
    assert.ok(
      told.some((each) => tells.test(each)),
      `told: ${told.join('; ') || 'nothing'}`,
    );
    await context.close();
  });
}

test('axe detects a picture without a description and low contrast', { tag: '@slow' }, async () => {
  const { page, context } = await open(browser, site.at(list), { bypassCSP: true });
  await plant(page, '<img src="/icon.svg"><p style="color: #aaa">pale</p>');
  const told = (await axe(page)).join('\n');
  assert.match(told, /^image-alt at img/m);
  assert.match(told, /^color-contrast at /m);
  await context.close();
});

/** Inserts it at the top of the text, as a build would. The page's own policy, which would refuse it, is off here. */
async function plant(page: Page, html = '', css = ''): Promise<void> {
  await page.evaluate(
    ([words, rules]) => {
      document.querySelector('.text')!.insertAdjacentHTML('afterbegin', words!);
      document.head.append(Object.assign(document.createElement('style'), { textContent: rules }));
    },
    [html, css],
  );
}
