/*
 * A list of steps: each a row the width of the page with a box, its words (the verb first, in heavier type) and, below,
 * the reason. Without script the boxes can be ticked for the moment; on paper they are empty boxes.
 */
import type { Element, ElementContent } from 'hast';
import { h } from 'hastscript';
import type { State } from 'mdast-util-to-hast';
import type { List, ListItem, Nodes, Paragraph } from 'mdast';
import { attribute, isTag, type TagNode } from '../reader/prose.ts';
import type { Surroundings } from './tags.ts';

/** Is this node a list of steps (`- [ ]`)? */
export const isSteps = (node: Nodes): node is List =>
  node.type === 'list' && node.children.some((item) => item.checked !== null && item.checked !== undefined);

export const steps = (state: State, list: List, around: Surroundings): Element =>
  h(
    'ul',
    { class: 'steps' },
    list.children.map((item) => step(state, item, around)),
  );

function step(state: State, item: ListItem, around: Surroundings): Element {
  const [first, ...rest] = item.children;
  const task = taskOf(item);
  const said = (name: string): string | undefined => task && attribute(task, name);
  const id = said('id') ?? '';
  const words =
    first?.type === 'paragraph' ? verbFirst(state.all(withoutTask(first))) : first ? [state.one(first, item) as ElementContent] : [];
  const below: ElementContent[] = rest.flatMap((child) => (state.one(child as never, item) as ElementContent) ?? []);
  const caution = said('hazard') ? around.caution(said('hazard')!) : null;
  if (caution) below.unshift(h('p', [h('strong', 'Take care: '), caution.line]));
  const time = said('time');
  const when = whenOf(said('when'), said('calendar'), around);
  return h('li', { class: 'step', id: `step-${id}`, dataDays: when?.days, dataAsks: said('asks') }, [
    h('label', [
      h('input', { type: 'checkbox', dataTick: id }),
      h('span', { class: 'step-words' }, [...words, time ? h('span', { class: 'step-time' }, ` (${time})`) : '']),
    ]),
    when ? h('p', { class: 'step-day' }, when.shown) : '',
    said('asks') ? answers(id, around.contact(said('asks')!)?.name ?? 'the club') : '',
    below.length > 0 ? h('div', { class: 'reason' }, below) : '',
  ]);
}

type StepWhen = { shown: (ElementContent | string)[]; days?: string };

/** A step's own days, counted by the browser from the day the reader gives; or its window here. */
function whenOf(when: string | undefined, calendar: string | undefined, around: Surroundings): StepWhen | null {
  if (calendar) {
    const days = around.packageDays(calendar);
    const [, , least, most] = days?.split(';')[0]?.split(' ') ?? [];
    return days ? { shown: [`day ${least} to day ${most} after installing`], days } : { shown: ['no figure for this club'] };
  }
  const own = /^day (\d+)(?: to day (\d+))? after/.exec(when ?? '');
  if (own) return { shown: [when!], days: `${own[1]} ${own[2] ?? own[1]}` };
  const window = when ? around.window(when) : null;
  return window ? { shown: [h('span', { dataWindows: window.windows }, window.words)] } : null;
}

/** At a step that pauses the list: the two answers that let it go on. They wake with the page's script. */
const answers = (id: string, name: string): Element =>
  h('p', { class: 'deeds', dataAwake: '', hidden: true }, [
    h('button', { type: 'button', dataDeed: 'well', value: id }, 'All is well here'),
    h('button', { type: 'button', dataDeed: 'asked', value: id }, `I asked: ${name}`),
  ]);

/** The tag that names a step: the last thing in its first line. */
export function taskOf(item: ListItem): TagNode | undefined {
  const first = item.children[0];
  const within = first && 'children' in first ? (first.children as unknown[]) : [];
  return [...within, ...item.children].filter(isTag).find((tag) => tag.name === 'Task');
}

const withoutTask = (paragraph: Paragraph): Paragraph => ({
  ...paragraph,
  children: paragraph.children.filter((child) => !(isTag(child) && (child as unknown as TagNode).name === 'Task')),
});

/** The first word in heavier type; spaces at the end go. */
function verbFirst(words: ElementContent[]): ElementContent[] {
  const last = words.at(-1);
  if (last?.type === 'text') last.value = last.value.trimEnd();
  const [first, ...rest] = words;
  if (first?.type !== 'text') return words;
  const match = /^(\S+)([\s\S]*)$/.exec(first.value);
  return match ? [h('strong', match[1]!), { type: 'text', value: match[2]! }, ...rest] : words;
}
