/* Phrases that puzzled readers, with the words that took their place. No page, button or message may bring one back. */
import assert from 'node:assert/strict';
import { globSync, readFileSync } from 'node:fs';
import { test } from 'vitest';

// From a reading of every page by members, 28 November 2026. There is no published source.
const REPLACED: [notThis: RegExp, writeThis: string][] = [
  [/Someone is unwell: ring|\b[Rr]ing 911/, 'Emergency: call 911'],
  [/\b[Ww]hom to (?:ask|call|ring|tell)\b/, 'Who to call'],
  [/Rather ask\?/, 'Can’t find it? Ask a member'],
  [/steps in \S+ pauses/, 'steps in 5 parts'],
  [/When, here/, 'In the valley'],
  [/from memory, then tick/, 'Do the jobs, then check them off'],
  [/Your ticks(?: stand|<)/, 'Your progress'],
  [/More than one run|Runs of this list|\b(?:Begin another|Start this|Name this|File this|Address of this) run/, 'More than one hive'],
  [/Carry it away/, 'Save or share'],
  [/Calendar file of the steps/, 'Add remaining steps to my calendar'],
  [/The address would add|Take it over|'Leave it'/, 'Someone shared this checklist. Use it here / Not now'],
  [/Put aside what cannot/, 'Remove unreadable data'],
  [/\bto mend\b|\b[Bb]oxes to mend/, 'There are 3 problems'],
  [/\bpart(?:ed)? (?:the columns|by a tab)/, 'separate the columns with a tab, comma or space'],
  [/\bA line a colony/, 'One line per colony'],
  [/figure stands there/, 'This is the club’s figure. You can change it.'],
  [/Share of the mites found|takes the count as it is/, 'Adjust for missed mites'],
  [/Two half frames are one/, 'Count two half-full frames as one'],
  [/>Work it out</, 'Calculate'],
  [/What it does not tell/, 'Limits of this calculator'],
  [/In the end a (?:doctor|regulator)|the (?:doctor|regulator) decides/, 'Always follow medical advice; Local rules apply'],
  [/No haste/, 'Not urgent'],
  [/[Dd]ead bees lie deep/, 'A thick layer of dead bees'],
  [/dead or missing or loose/, 'The queen is dead, missing or loose'],
  [/hang about her/, 'they will cluster around her scent'],
  [/\bNo luck:/, 'Still can’t find her?'],
  [/\bdispleased\b/, 'they didn’t accept the queen or the hive'],
  [/honey from elsewhere/, 'Never feed honey from another source'],
  [/\b(?:Light|Lift|Pull) no\b/, 'Don’t light a fire'],
  [/worries us/, 'More than ½ inch is a concern'],
  [/\bfit day\b/, 'on the first warm, calm day'],
  [/[Tt]wo courses/, 'two options if you find them'],
  [/nobody's word/, 'Don’t assume a swarm is harmless'],
  [/speaks? against/, 'rules it out'],
  [/>(?:Beside it|On you|Forbids|Warmth)</, 'Notes, Protective gear, Not allowed, Temperature'],
  [/thing like a peanut/, 'What is this peanut-shaped cell?'],
  [/Sums of the bee yard/, 'Beekeeping calculators'],
  [/found by any word/, 'Search every page'],
  [/Nothing begins/, '(leave out)'],
  [/To the text/, 'Skip to main content'],
  [/>All rows</, 'See all sources for this figure'],
  [/How sure:/, 'Confidence:'],
  [/Reading it your way/, 'Display settings'],
  [/Dates for the hill/, 'Use hill dates'],
  [/"Counts here"|What holds for certain days|"To take away"|\bBy duty\b/, 'Local mite counts; Temporary notices; Downloads; By role'],
  [/, worked out<\/Example>/, 'see the calculation'],
  [/\bKeepers (?:blame|say|differ)/, 'Beekeepers blame'],
  [/for use without signal/, 'Available offline'],
  [/this club does not exist/, 'Demo site'],
];

/** Comments are for developers. Only what may reach a page counts. */
const withoutComments = (text: string): string => text.replace(/\/\*[\s\S]*?\*\/|<!--[\s\S]*?-->|^\s*(?:\/\/|#).*$/gm, '');
const files = globSync(['src/{calculators,client,components,layouts,lib,pages,service-worker}/**/*.{ts,astro}', 'content/**/*.{mdx,yaml}']);

test('no page, button or message uses a phrase that was replaced', () => {
  assert.ok(files.length > 1000, `only ${files.length} files were read`);
  const found = files.flatMap((file) => {
    const text = withoutComments(readFileSync(file, 'utf8'));
    return REPLACED.flatMap(([phrase, instead]) => {
      const hit = phrase.exec(text);
      return hit ? [`${file}: found “${hit[0]}”; write “${instead}”`] : [];
    });
  });
  assert.deepEqual(found, []);
});
