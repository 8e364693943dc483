/*
 * Sign finder: reads the ticked signs, sorts the page's troubles by shared/signs, and says for each what fits, what speaks against it and
 * what to look for next. The ticks are in the address after `#`.
 */
import { readAddress, writeAddress } from '../../../shared/address/address.ts';
import type { Shows, Strength } from '../../../shared/signs/points.ts';
import { rankSigns, type Candidate, type Trouble } from '../../../shared/signs/rank.ts';
import { make } from '../../calculators/form/make.ts';
import * as text from './text.en.ts';

const MOST_QUESTIONS = 4;

const root = document.querySelector<HTMLElement>('[data-signs]');
if (root) wake(root);

function wake(root: HTMLElement): void {
  const form = root.querySelector('form')!;
  const part = (name: string, within: ParentNode = root) => within.querySelector<HTMLElement>(`[data-part="${name}"]`)!;
  const boxes = [...form.querySelectorAll<HTMLInputElement>('input[type=checkbox]')];
  const phase = form.querySelector<HTMLSelectElement>('[name=phase]')!;
  const cards = [...root.querySelectorAll<HTMLDetailsElement>('[data-trouble]')];
  const troubles = cards.map(troubleOf);
  const notThere = new Set<string>();
  const wordsOf = (sign: string): string => boxes.find(({ value }) => value === sign)!.nextElementSibling!.textContent!;
  const titleOf = (id: string): string => cards.find((card) => card.dataset.trouble === id)!.querySelector('h3')!.textContent!;

  function show(): void {
    const there = boxes.filter(({ checked }) => checked).map(({ value }) => value);
    for (const sign of there) notThere.delete(sign);
    const ranking = rankSigns({ there, notThere: [...notThere], ...(phase.value ? { phase: phase.value } : {}) }, troubles);
    const wasFound = cards.filter((card) => part('found').contains(card));
    part('rest').append(...cards);
    for (const card of cards) part('why', card).replaceChildren();
    const [first, ...others] = ranking.candidates.map(cardOf);
    for (const card of wasFound) card.open &&= [first, ...others].includes(card);
    for (const card of [first, ...others]) if (card && (card === first || card.dataset.report === 'true')) card.open = true;
    part('found').replaceChildren(...(first ? [first, lookFor(ranking.candidates), ...others] : []));
    const usual = boxes.filter(({ checked, dataset }) => checked && dataset.usually);
    list(
      'usually',
      usual.map((box) => text.usually(wordsOf(box.value), box.dataset.usually!)),
    );
    say('little', ranking.fitLittle.length > 0 ? text.lessLikely(ranking.fitLittle.map(titleOf)) : '');
    say(
      'status',
      text.headline(
        ranking,
        ranking.candidates.map(({ id }) => titleOf(id)),
        usual.length,
      ),
    );
    showMissing();
    for (const group of form.querySelectorAll('details')) {
      const ticked = group.querySelectorAll('input:checked').length;
      part('count', group).textContent = ticked > 0 ? text.ticked(ticked) : '';
    }
    const pairs = [
      ['there', there.join(',')],
      ['not', [...notThere].join(',')],
      ['phase', phase.value],
    ].filter(([, value]) => value) as [string, string][];
    history.replaceState(null, '', pairs.length > 0 ? `#${writeAddress(pairs)}` : location.pathname + location.search);
  }

  /** The trouble's own place on the page, with the effect of the ticks on it. */
  function cardOf(candidate: Candidate): HTMLDetailsElement {
    const card = cards.find(({ dataset }) => dataset.trouble === candidate.id)!;
    card.querySelector('details')!.open = false;
    part('why', card).replaceChildren(
      ...text.whyLines(candidate, wordsOf).map(([name, words]) => make('p', {}, make('b', {}, `${name}: `), words)),
    );
    return card;
  }

  /** The signs that would move the first candidates most, each once. */
  function lookFor(candidates: readonly Candidate[]): HTMLElement {
    const signs = [0, 1, 2].flatMap((place) => candidates.slice(0, 3).flatMap(({ lookFor }) => lookFor[place] ?? []));
    const first = [...new Set(signs)].slice(0, MOST_QUESTIONS);
    return make(
      'div',
      {},
      ...(first.length > 0
        ? [make('h3', {}, text.lookNext), make('ul', { class: 'rows' }, ...first.map((sign) => question(sign, candidates)))]
        : []),
    );
  }

  function question(sign: string, candidates: readonly Candidate[]): HTMLElement {
    const tells = candidates.filter(({ lookFor }) => lookFor.includes(sign)).map(({ id }) => titleOf(id));
    const answer = (words: string, record: () => void): HTMLButtonElement => {
      const button = make('button', { type: 'button', 'aria-label': `${words}: ${wordsOf(sign)}` }, words);
      button.addEventListener('click', () => {
        record();
        show();
        part('status').focus();
      });
      return button;
    };
    return make(
      'li',
      {},
      wordsOf(sign),
      make('p', { class: 'small quiet' }, text.tellsAbout(tells)),
      make(
        'p',
        { class: 'actions' },
        answer(text.isThere, () => (boxes.find(({ value }) => value === sign)!.checked = true)),
        answer(text.isNotThere, () => notThere.add(sign)),
      ),
    );
  }

  function showMissing(): void {
    const place = part('not-there');
    place.hidden = notThere.size === 0;
    const again = make('button', { type: 'button' }, text.takeBack);
    again.addEventListener('click', () => {
      notThere.clear();
      show();
    });
    place.replaceChildren(text.lookedFor([...notThere].map(wordsOf)), again);
  }

  function say(name: string, words: string): void {
    part(name).textContent = words;
    if (name !== 'status') part(name).hidden = words === '';
  }

  function list(name: string, lines: readonly string[]): void {
    part(name).hidden = lines.length === 0;
    part(name).replaceChildren(...lines.map((line) => make('li', {}, line)));
  }

  function open(): void {
    const { values } = readAddress(location.hash, ['there', 'not', 'phase']);
    if (values.size === 0) return;
    const known = (name: string): string[] =>
      (values.get(name) ?? '').split(',').filter((sign) => boxes.some(({ value }) => value === sign));
    for (const box of boxes) box.checked = known('there').includes(box.value);
    notThere.clear();
    for (const sign of known('not')) notThere.add(sign);
    phase.value = [...phase.options].some(({ value }) => value === values.get('phase')) ? values.get('phase')! : '';
    show();
  }

  form.addEventListener('change', show);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    show();
    part('status').focus();
  });
  form.addEventListener('reset', () => {
    notThere.clear();
    // The boxes become empty only after the event.
    setTimeout(show);
  });
  window.addEventListener('hashchange', open);
  open();
  if (boxes.some(({ checked }) => checked)) show();
}

function troubleOf(card: HTMLElement): Trouble {
  const { trouble, report, harmless, phases } = card.dataset;
  const shown = [...card.querySelectorAll<HTMLElement>('[data-shown]')].map(
    (line) => line.dataset.shown!.split(' ') as [string, Strength, Shows],
  );
  return {
    id: trouble!,
    mustReport: report === 'true',
    harmless: harmless === 'true',
    shown: shown.map(([sign, strength, shows]) => ({ sign, strength, shows })),
    ...(phases ? { phases: phases.split(' ') } : {}),
  };
}
