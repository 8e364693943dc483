/* Checks the tags of a page: known, complete, correctly spelt, and with existing targets. */
import type { Nodes } from 'mdast';
import type { Diagnostic } from '../source/diagnostic.ts';
import { attribute, isTag, plainText, walk, type TagNode } from '../source/prose.ts';
import { TAGS, type Tag } from '../source/tag-syntax.ts';
import type { ValidEntries } from './fields.ts';
import { spanishName } from '../../shared/season/spanish.ts';
import { anchorName, anchors } from '../../shared/season/when.ts';
import { districtsIn, undated } from './season.ts';
import { nearName, nearOrAll } from '../../shared/words/near-name.ts';
import { dutiesOf } from './references.ts';
import { notIn } from './suggestions.ts';
import { atNode, isAway, isDraft, isPage, isWithdrawn, type Page } from './place.ts';

type Form = { must: readonly string[]; may: readonly string[]; holdsWords: boolean; example: string };

export const FORMS: Record<Tag, Form> = {
  Figure: { must: ['id'], may: ['row'], holdsWords: false, example: '<Figure id="install-temperature-least" />' },
  Task: { must: ['id'], may: ['time', 'when', 'calendar', 'hazard', 'asks'], holdsWords: false, example: '<Task id="close-entrance" />' },
  Example: {
    must: ['tool'],
    may: ['with'],
    holdsWords: true,
    example: '<Example tool="syrup" with="sugar-parts=2&water-parts=1">words</Example>',
  },
  Contact: { must: ['duty'], may: [], holdsWords: false, example: '<Contact duty="inspector" />' },
  Day: { must: ['of'], may: [], holdsWords: false, example: '<Day of="last syrup" />' },
  Line: { must: ['of'], may: [], holdsWords: false, example: '<Line of="emergency" />' },
  Caution: { must: ['id'], may: ['part'], holdsWords: false, example: '<Caution id="disease-spread" />' },
  Drawing: { must: ['name'], may: [], holdsWords: false, example: '<Drawing name="queen-cell" />' },
  Local: { must: ['id'], may: ['ask'], holdsWords: false, example: '<Local id="registering-hives" />' },
};

export function tagFaults(club: ValidEntries): Diagnostic[] {
  return club.folder.entries
    .filter(isPage)
    .flatMap((page) =>
      [...tagsOf(page.tree, null)].flatMap(({ tag, within }) => [
        ...formFaults(page, tag),
        ...placeFaults(page, tag, within),
        ...pointFaults(page, tag, club),
      ]),
    );
}

/** Each tag, with the link, heading or example that contains it. */
function* tagsOf(node: Nodes | TagNode, within: string | null): Generator<{ tag: TagNode; within: string | null }> {
  if (isTag(node)) yield { tag: node, within };
  const inside = node.type === 'link' ? 'a link' : node.type === 'heading' ? 'a heading' : isTag(node) ? 'another tag' : within;
  if ('children' in node) for (const child of node.children) yield* tagsOf(child as Nodes, inside);
}

function formFaults(page: Page, tag: TagNode): Diagnostic[] {
  const form = FORMS[tag.name as Tag];
  if (!form)
    return [
      atNode(page, tag, { rule: 'tag', field: tag.name || 'a tag', found: `a tag <${tag.name}>`, write: `one of: ${TAGS.join(', ')}` }),
    ];
  const names = tag.attributes.map(({ name }) => name);
  const all = [...form.must, ...form.may];
  const faults = names.flatMap((name, index): Diagnostic[] => {
    if (names.indexOf(name) !== index)
      return [atNode(page, tag, { rule: 'tag', field: `${tag.name}, ${name}`, found: `"${name}" twice`, write: 'it once' })];
    if (all.includes(name)) return [];
    return [
      atNode(page, tag, {
        rule: 'tag',
        field: tag.name,
        found: `"${name}", which ${tag.name} does not have`,
        write: nearName(name, all) ?? `one of: ${all.join(', ')}`,
      }),
    ];
  });
  for (const name of form.must)
    if (!attribute(tag, name)?.trim())
      faults.push(
        atNode(page, tag, {
          rule: 'tag',
          field: tag.name,
          found: names.includes(name) ? `a blank ${name}` : `no ${name}`,
          write: form.example,
        }),
      );
  const words = tag.children.some((child) => plainText(child).trim() !== '');
  if (!form.holdsWords && tag.children.length > 0)
    faults.push(atNode(page, tag, { rule: 'tag', field: tag.name, found: `words inside ${tag.name}`, write: form.example }));
  if (form.holdsWords && !words)
    faults.push(atNode(page, tag, { rule: 'tag', field: tag.name, found: `${tag.name} without words to press`, write: form.example }));
  return faults;
}

/** A figure, contact or example is itself a link, so it is not allowed inside another link or in a heading. */
function placeFaults(page: Page, tag: TagNode, within: string | null): Diagnostic[] {
  if (tag.name === 'Drawing')
    return page.tree.children.some((block) => isAlone(tag, block))
      ? []
      : [
          atNode(page, tag, {
            rule: 'tag',
            field: 'Drawing',
            found: 'a drawing inside a sentence, a list or a table',
            write: 'it on a line of its own, with an empty line before and after',
          }),
        ];
  if (tag.name === 'Local') {
    const isIn = ['articles', 'bulletins', 'checklists'].includes(page.collection);
    return isIn && page.tree.children.some((block) => isAlone(tag, block))
      ? []
      : [
          atNode(page, tag, {
            rule: 'tag',
            field: 'Local',
            found: isIn ? 'words of the place inside a sentence, a list or a table' : `words of the place in ${page.collection}/`,
            write: isIn ? 'it on a line of its own, with an empty line before and after' : 'it in articles, bulletins or checklists',
          }),
        ];
  }
  if (tag.name === 'Caution')
    return [...walk(page.tree)].some((block) => isAlone(tag, block))
      ? []
      : [
          atNode(page, tag, {
            rule: 'tag',
            field: 'Caution',
            found: 'a caution inside a sentence, a heading or a table',
            write: 'it on a line of its own, with an empty line before and after',
          }),
        ];
  return within === null || tag.name === 'Task'
    ? []
    : [atNode(page, tag, { rule: 'tag', field: tag.name, found: `${tag.name} inside ${within}`, write: 'it in the sentence beside it' })];
}

/** True for a block, or in a paragraph of blocks alone. The parser treats a tag on its own line as a paragraph. */
function isAlone(tag: TagNode, block: Nodes): boolean {
  if ((block as unknown) === tag) return tag.type === 'mdxJsxFlowElement';
  if (block.type !== 'paragraph' || !(block.children as unknown[]).includes(tag)) return false;
  return block.children.every((child) =>
    isTag(child) ? /^(?:Caution|Drawing|Local)$/.test(child.name) : child.type === 'text' && child.value.trim() === '',
  );
}

function pointFaults(page: Page, tag: TagNode, club: ValidEntries): Diagnostic[] {
  if (tag.name === 'Figure') return figureFaults(page, tag, club);
  if (tag.name === 'Drawing') return drawnFaults(page, tag, club);
  if (tag.name === 'Day') return dayFaults(page, tag, club);
  if (tag.name === 'Line') return lineFaults(page, tag);
  if (tag.name === 'Caution') return quotedFaults(page, tag, club);
  const duty = attribute(tag, 'duty');
  if (tag.name !== 'Contact' || !duty || !club.club) return [];
  const known = dutiesOf(club.club.data);
  if (known.has(duty)) return [];
  return [
    atNode(page, tag, {
      rule: 'contact',
      field: 'Contact, duty',
      found: `"${duty}", a duty that no contact in club.yaml has`,
      write: nearOrAll(duty, known),
    }),
  ];
}

/** An anchor by name, which this club can date. */
function dayFaults(page: Page, tag: TagNode, club: ValidEntries): Diagnostic[] {
  const of = attribute(tag, 'of');
  if (!of) return [];
  const at = (found: string, write: string): Diagnostic[] => [atNode(page, tag, { rule: 'when', field: 'Day, of', found, write })];
  const id = anchors.find((each) => anchorName(each) === of || spanishName(each) === of);
  if (!id) return at(`"${of}"`, nearOrAll(of, anchors.map(anchorName)));
  const no = undated([id], districtsIn(club));
  return no ? at(no.found, no.write) : [];
}

/** The emergency number or the poison line. */
function lineFaults(page: Page, tag: TagNode): Diagnostic[] {
  const of = attribute(tag, 'of');
  return !of || of === 'emergency' || of === 'poison'
    ? []
    : [atNode(page, tag, { rule: 'tag', field: 'Line, of', found: `"${of}"`, write: '"emergency" or "poison"' })];
}

/** A quoted caution exists, is shown, and has the requested part. */
function quotedFaults(page: Page, tag: TagNode, club: ValidEntries): Diagnostic[] {
  const [id, part] = [attribute(tag, 'id'), attribute(tag, 'part')];
  if (!id) return [];
  const at = (field: string, found: string, write: string): Diagnostic[] => [atNode(page, tag, { rule: 'reference', field, found, write })];
  const known = club.ids.cautions;
  if (!known.has(id)) return at('Caution, id', `"${id}", which is not in cautions/`, nearOrAll(id, known));
  const caution = club.of.cautions.find((each) => each.id === id);
  if (caution && isWithdrawn(caution))
    return at('Caution, id', `"${id}", which was withdrawn`, `cautions/${id}.yaml mended and without "withdrawn:", or no quotation of it`);
  if (part === undefined) return [];
  if (part !== 'if-it-happens') return at('Caution, part', `"${part}"`, '"if-it-happens", or no part for what it says');
  return !caution || caution.data['if-it-happens']
    ? []
    : at('Caution, part', `"${part}", which cautions/${id}.yaml does not have`, 'that field in the caution, or no part');
}

function drawnFaults(page: Page, tag: TagNode, club: ValidEntries): Diagnostic[] {
  const name = attribute(tag, 'name');
  if (!name) return [];
  const at = (found: string, write: string): Diagnostic[] => [
    atNode(page, tag, { rule: 'reference', field: 'Drawing, name', found: `"${name}", ${found}`, write }),
  ];
  if (!club.ids.drawings.has(name))
    return [atNode(page, tag, { rule: 'reference', field: 'Drawing, name', ...notIn(club, 'drawings', name) })];
  const held = club.of.drawings.find(({ id }) => id === name);
  return held && isAway(held) && !isDraft(page) ? at('a draft, which is not shown', 'a drawing that is not a draft') : [];
}

function figureFaults(page: Page, tag: TagNode, club: ValidEntries): Diagnostic[] {
  const [id, row] = [attribute(tag, 'id'), attribute(tag, 'row')];
  if (!id) return [];
  if (!club.ids.figures.has(id)) {
    return [atNode(page, tag, { rule: 'reference', field: 'Figure, id', ...notIn(club, 'figures', id) })];
  }
  const figure = club.of.figures.find((each) => each.id === id);
  if (!figure) return [];
  if (isAway(figure) && !isDraft(page))
    return [
      atNode(page, tag, {
        rule: 'reference',
        field: 'Figure, id',
        found: `"${id}", a draft, which is not shown`,
        write: 'a figure that is not a draft',
      }),
    ];
  const rows = new Set(figure.data.rows.map((each) => each.id));
  if (row === undefined && figure.data['also-follows'])
    return [
      atNode(page, tag, {
        rule: 'reference',
        field: 'Figure, row',
        found: `"${id}" without a row, while the club follows another row in each part of the year`,
        write: `the row that is meant, such as row="${figure.data.follows}"`,
      }),
    ];
  if (row === undefined || rows.has(row)) return [];
  return [
    atNode(page, tag, {
      rule: 'reference',
      field: 'Figure, row',
      found: `"${row}", which is not a row of ${id}`,
      write: nearOrAll(row, rows),
    }),
  ];
}
