/*
 * Astro integration `almanac()`. It checks the content before a build and stops at faults. After the build it writes the outputs that
 * need finished pages: search index, book, headers for hosts, precache list, edition record, report. In the preview it shows faults.
 */
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroConfig, AstroIntegration } from 'astro';
import { setLanguageHere } from '../../shared/country/language-here.ts';
import { validEntries, type ValidEntries } from '../checks/fields.ts';
import { dueOn } from '../checks/review.ts';
import { almanacOf, type RawEntry } from '../lib/almanac.ts';
import { passSettings, type Settings } from '../lib/settings.ts';
import { publishedIn } from '../source/last-edition.ts';
import { editionDay } from '../source/edition-day.ts';
import { languageOf, withoutDrafts, type Folder } from '../source/folder.ts';
import { openFolder } from '../source/open-folder.ts';
import { readFolderCached } from '../source/parse-cache.ts';
import { checkContent } from './check-content.ts';
import { hashOfFiles, sourcePrints, whatChanged, type Prints } from './fingerprint.ts';
import { formerEdition, type FormerEdition } from './former-edition.ts';
import { optionsIn, type AlmanacOptions } from './options.ts';
import { writeOutputs } from './outputs.ts';
import { previewServer } from './preview-server.ts';
import { startProgress, type Progress } from './progress.ts';
import { reportLines } from './report.ts';
import { viteConfig } from './vite-config.ts';

/** One run of Astro. */
type Run = { root: string; options: AlmanacOptions; settings: Settings; say: (line: string) => void };
/** The input of a build. */
type Build = { folder: Folder; prints: Prints; former: FormerEdition | null; progress: Progress | null };

export function almanac(): AstroIntegration {
  let run: Run;
  let build: Build;
  let config: AstroConfig;
  return {
    name: 'almanac',
    hooks: {
      'astro:config:setup': async ({ command, config: { root: address }, updateConfig }) => {
        if (command === 'preview') return;
        const root = fileURLToPath(address);
        const options = optionsIn(process.env, root);
        const pictures = join(root, '.almanac', 'pictures');
        const say = (line: string): void => (options.quiet ? undefined : console.log(line));
        const settings = (folder: Folder, fingerprint: string): Settings => ({
          content: options.content,
          pictures,
          edition: { day: editionDay(folder, options.edition), fingerprint },
        });
        const speak = (folder: Folder): void => {
          setLanguageHere(languageOf(folder));
          updateConfig({ vite: viteConfig(languageOf(folder)) });
        };
        if (command === 'build') {
          const prints = sourcePrints(root, options.content);
          const folder = await checkContent(options.content, pictures, say, {
            edition: options.edition,
            before: publishedIn(options.published),
          });
          speak(folder);
          run = { root, options, say, settings: settings(folder, hashOfFiles(prints).slice(0, 16)) };
          build = { folder, prints, former: null, progress: null };
        } else {
          const folder = openFolder(options.content, false, readFolderCached);
          speak(folder);
          run = { root, options, say, settings: settings(folder, 'draft') };
        }
        passSettings(run.settings);
      },

      'astro:config:done': ({ config: whole }) => {
        config = whole;
      },

      'astro:build:start': () => {
        build.former = formerEdition(run.options.replaces ?? fileURLToPath(config.outDir));
        const expected = Object.keys(build.former?.record.pages ?? {}).length;
        build.progress = run.options.quiet ? null : startProgress(fileURLToPath(config.outDir), expected);
      },

      'astro:build:done': async ({ dir, pages }) => {
        const { root, options, settings, say } = run;
        const { folder, prints, former, progress } = build;
        progress?.end(`Pages drawn: ${pages.length}.`);
        const site = fileURLToPath(dir).replace(/[\\/]$/, '');
        const address = config.site;
        const club = validEntries(folder);
        const entriesOf = (name: string): readonly RawEntry[] => (name === 'offered' ? offeredIn(folder) : entriesIn(club, name));
        const content = almanacOf(entriesOf, settings.edition.day);
        const others = [...content.alsoIn.keys()].map((tongue) => almanacOf(entriesOf, settings.edition.day, tongue));
        await writeOutputs({
          content: options.content,
          site,
          base: config.base,
          address,
          edition: settings.edition,
          almanac: content,
          others,
          pictures: settings.pictures,
          former,
          say,
        });
        const report = reportLines({
          site,
          former,
          almanac: content.club.almanac,
          address: address ?? null,
          due: dueOn(club, settings.edition.day),
        });
        const changed = whatChanged(prints, sourcePrints(root, options.content));
        if (changed) throw new Error(`${changed} while the site was built. Run it again.`);
        for (const line of report) say(line);
        if (!address) say('No web address was given (--site), so no sitemap and no feed was written.');
      },

      'astro:server:setup': async ({ server }) => {
        const { options, settings, say } = run;
        await previewServer(server, {
          content: options.content,
          base: config.base,
          pictures: settings.pictures,
          built: fileURLToPath(config.outDir),
          say,
        });
      },
    },
  };
}

/** What is translated for readers of another language. The checks found its fields valid. */
const offeredIn = (folder: Folder): RawEntry[] =>
  [...withoutDrafts(folder).alsoIn].flatMap(([tongue, entries]) =>
    entries.flatMap((entry) =>
      entry.translation ? [{ id: `${tongue}/${entry.collection}/${entry.id}`, data: entry.fields.value, body: entry.body }] : [],
    ),
  );

/** The entries that the checks found valid, a collection at a time. Pictures are a collection of Astro's alone. */
const entriesIn = ({ club, of }: ValidEntries, name: string): readonly RawEntry[] =>
  name === 'club' ? (club ? [club] : []) : ((of as Record<string, readonly RawEntry[]>)[name] ?? []);
