/*
 * Safety rules for people and bees. Each has one owner, and pages quote it. `rival` matches a different rule on another page. `unless`
 * are words that exclude a match. `stood` are sentences that were once in the demo club and contradicted another page, so that each rival
 * is tested. The sources of its owner explain why each rule is right.
 */
export type OneRule = {
  danger: string;
  /** The file that contains it, below the content folder. */
  owner: string;
  /** Pages that must show it, because they quote the caution or their work places its box. */
  shownOn: readonly string[];
  /** Applied to one block at a time: a paragraph, a line of a list, a row of a table, a field. */
  rival: readonly RegExp[];
  unless?: RegExp;
  stood: readonly string[];
};

export const RULES: readonly OneRule[] = [
  {
    danger: 'foulbrood: what becomes of the gear, and whether another hive is opened',
    owner: 'cautions/disease-spread.yaml',
    shownOn: [
      'bulletins/american-foulbrood',
      'bulletins/european-foulbrood',
      'bulletins/sacbrood',
      'bulletins/parasitic-mite-syndrome',
      'bulletins/chalkbrood',
      'bulletins/tropilaelaps',
      'checklists/disease-suspected',
      'checklists/foulbrood-steps',
      'articles/clean-between-hives',
      'articles/antibiotics',
      'articles/foulbrood-confirmed',
      'articles/used-equipment',
      'articles/dead-colony',
    ],
    rival: [
      /\b(?:clean|wash|scrub|scrape)\b.*\bbefore (?:the next|each next|another|you touch another|you open another|you go on)\b/i,
      /^before the next hive\b/i,
      /\bother hives?\b.*\bwith the same (?:gloves|tool)/i,
      /\bclean tool, boots and hands\b/i,
      /^wash tool and gloves\b/i,
    ],
    unless: /\bhealthy\b|\blifted out whole\b|\bno washing lets you\b/i,
    stood: [
      'Clean hive tool, gloves and smoker bellows before you touch another hive.',
      'Clean your gloves and tool before the next hive.',
      'Clean tools and gloves before the next hive.',
      'Clean gloves and tool before you go on.',
      'Before the next hive, two minutes:',
      'Scrape, scrub and rinse hive tool and gloves before each next hive.',
      'Do not open your other hives with the same gloves and tool.',
      'Clean tool, boots and hands; bag the gloves',
      'Wash tool and gloves: between hives.',
    ],
  },
  {
    danger: 'foulbrood: a cure is promised',
    owner: 'cautions/disease-spread.yaml',
    shownOn: ['bulletins/american-foulbrood', 'bulletins/european-foulbrood'],
    rival: [/\border (?:a|the) cure\b/i, /\bfoulbrood\b.*\bcure[sd]?\b/i],
    unless: /\bno cure\b/i,
    stood: ['The inspector may test the hive and order a cure.', 'The state may test for it and order a cure.', 'Foulbrood can be cured.'],
  },
  {
    danger: 'foulbrood: a drug is offered',
    owner: 'articles/antibiotics.mdx',
    shownOn: [],
    rival: [/\bwhere (?:to|can I) buy\b.*\bantibiotics?\b/i, /\bold packet\b.*\bpesticide-office\b/i],
    stood: [
      'Where to buy antibiotics for bees',
      'Where can I buy antibiotics for bees?',
      'An old packet from before 2017 | Do not use it. Ask <Contact duty="pesticide-office" /> how to hand it in',
    ],
  },
  {
    danger: 'a splash of acid',
    owner: 'cautions/acids.yaml',
    shownOn: ['articles/acid-splash', 'articles/wood-bleach', 'checklists/late-summer-mites'],
    rival: [/\bsplash\w*\b.*\b(?:rinse|flush|wash|water|first aid)\b/i, /\bsore eyes\b.*\bfresh air\b/i],
    unless: /\bas for a splash\b|\blabel's first aid comes first\b/i,
    stood: [
      'Splashed: rinse with plenty of water, then ring the poison line.',
      "Splashed? The label's first aid, then Poison Help, 1-800-222-1222. Hard to breathe: the emergency number first.",
      'Cough or sore eyes: go into fresh air, then ring the poison line.',
    ],
  },
  {
    danger: 'bees loose in or on a vehicle',
    owner: 'cautions/driving.yaml',
    shownOn: ['checklists/moving-a-hive', 'articles/dropped-package'],
    rival: [/\bwindows? (?:up|down)\b/i, /\bopen (?:all |the )?windows\b/i, /\bstop, stay in\b/i],
    stood: [
      'Know what to do if it opens: stop, stay in, ring',
      'Windows up, hazard lights on.',
      'Loose bees: stop where it is safe, open windows, get out.',
      'Pull over where it is safe. Open all windows. Everyone gets out on the side away from the traffic.',
    ],
  },
  {
    danger: 'a bad reaction to stings: only an injector is known',
    owner: 'cautions/allergy.yaml',
    shownOn: ['checklists/package-arrival', 'checklists/moving-a-hive'],
    rival: [/\b(?:own|second|the) injector\b/i],
    unless: /\bspray\b|\bepinephrine\b/i,
    stood: [
      "Use the person's own injector now, in the outer thigh.",
      'Use a second injector, if there is one.',
      'The injector was used and it is better',
    ],
  },
  {
    danger: 'what the law says of wood bleach',
    owner: 'articles/wood-bleach.mdx',
    shownOn: [],
    rival: [
      /\b(?:bleach|acid|unregistered|registered)\b.*\b(?:illegal|offen[sc]e|not legal|punished)\b/i,
      /\b(?:illegal|offen[sc]e)\b.*\b(?:pesticide|unregistered)\b/i,
    ],
    stood: [
      'Unregistered, and an offense in the US',
      'Wood bleach and farm-store acid are not registered, and not legal.',
      'It may be the same chemical, but it is not registered for bees. In the US that is an illegal use of a pesticide.',
      'The same agency: unregistered use can be punished',
    ],
  },
];
