/*
 * Safety rules for people and bees. Each has one owner, and pages quote it. `rival` matches a different rule on another page. `unless`
 * are words that exclude a match. `stood` are sentences that contradict the owner, so that each rival is tested. Most of them were once in
 * the demo club; a sentence that never was begins with "Elsewhere:". The sources of its owner explain why each rule is right.
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
    danger: 'how far a hive is moved, and why',
    owner: 'articles/moving-distances.mdx',
    shownOn: [],
    rival: [/\b(?:two|three) feet or (?:two|three) miles\b/i, /\bmean flight\b/i],
    // What people type is no rule.
    unless: /^(?:two|three) feet or (?:two|three) miles$/i,
    stood: [
      '"Three feet or three miles"? | Everyone agrees that they fly back. People disagree about branches, herbs and shutting them in.',
      'In English trials the mean flight was 0.3 miles in spring and 1.3 in summer.',
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
  {
    danger: 'queen cells: how many stay, and when somebody looks again',
    owner: 'articles/splits.mdx',
    shownOn: [],
    rival: [
      /\b(?:leave|keep) (?:two|2|three|3|both|several)\b.*\bcells?\b/i,
      /\b(?:leave|keep) one\b.*\bcell\b.*\bkeep out\b.*\bweeks\b/i,
      /\bgo back on day (?![67]\b)\d/i,
      /\bleave one or more\b/i,
    ],
    unless: /\bday 6 or 7\b/i,
    stood: [
      'Leave one good queen cell, close up, and keep out for about three weeks. Then look for eggs.',
      'She is gone. They need the cell, so leave one or more',
      'Elsewhere: Keep two good cells, in case one fails.',
      'Elsewhere: Go back on day 10 and take down the others.',
    ],
  },
  {
    danger: 'a sick or shrinking hive is combined with a healthy one',
    owner: 'articles/uniting.mdx',
    shownOn: [],
    rival: [/\b(?:unite|combine)\b.*\b(?:sick|diseased|shrinking|dwindling|hopeless)\b/i, /\b(?:sick|diseased|shrinking|dwindling)\b.*\b(?:unite|combine) (?:it|them)\b/i],
    unless: /\b(?:not|never|don't|nor|healthy)\b/i,
    stood: [
      'Elsewhere: Unite a hopeless colony with a strong one, because its bees are still of use.',
      'Elsewhere: If it is shrinking, unite it with its neighbor.',
    ],
  },
  {
    danger: 'two weak hives are combined with each other',
    owner: 'articles/uniting.mdx',
    shownOn: [],
    rival: [/\b(?:unite|combine)\b.*\b(?:weak|small)\b.*\b(?:hives?|colon(?:y|ies))\b/i],
    // What people type is no rule.
    unless: /\bstrong(?:er)?\b|^(?:unite|combine) weak hives$/i,
    stood: ['Six weeks after it | Unite weak, healthy hives | They need time to settle', 'Unite weak, healthy colonies early in fall preparation.'],
  },
  {
    danger: 'a comb, bees or gear leaves a suspect hive',
    owner: 'checklists/disease-suspected.mdx',
    shownOn: [],
    rival: [
      /\b(?:take|bring|carry|drive|send|mail)\b.*\b(?:comb|frame|brood)\b.*\b(?:to the|to your|to a) (?:inspector|mentor|meeting|neighbor|laboratory)\b/i,
      /\b(?:odd|sick|suspect)\b.*\b(?:move|give) (?:it|them|its combs?|the combs?) to (?:another|a strong|a healthy)\b/i,
    ],
    unless: /\b(?:never|not|don't|inspector says|inspector asks|as the inspector)\b/i,
    stood: [
      'Elsewhere: Bring the frame with the odd brood to the meeting, so that a mentor can look.',
      'Elsewhere: If one comb looks odd, give it to a strong hive that can clean it.',
    ],
  },
  {
    danger: 'bees are given honey that is not their own',
    owner: 'cautions/honey-as-feed.yaml',
    shownOn: ['checklists/fall-feeding'],
    rival: [
      /\bfeed (?:its|their|the|this|some) honey\b.*\bunless\b/i,
      /\b(?:feed|give) (?:bees|them|it|a weak hive)\b.*\bhoney from (?:a shop|a store|a jar|another)\b/i,
    ],
    unless: /\bDo not feed honey\b|\bnever\b(?!.*\bunless\b)/i,
    stood: [
      'Do not feed its honey to other colonies, unless you know why it died.',
      'Elsewhere: In an emergency, give them honey from a shop.',
    ],
  },
  {
    danger: 'honey for a child: from which age, and whether cooking helps',
    owner: 'cautions/infants-honey.yaml',
    shownOn: ['articles/honey-and-babies', 'articles/harvest-honey', 'articles/honey-room'],
    rival: [
      /\bhoney\b.*\b(?:under|before|below|until|from) (?:the age of )?(?:six|6|nine|9|eighteen|18|two|2|three|3) (?:months|years)\b/i,
      /\b(?:cooked|baked|heated|pasteurized) honey\b.*\b(?:safe|fine|harmless)\b/i,
    ],
    unless: /\b(?:not|never|no)\b/i,
    stood: ['Elsewhere: Honey may be given from six months.', 'Elsewhere: Baked honey is safe for a baby.'],
  },
  {
    danger: 'wax is heated on bare heat',
    owner: 'cautions/hot-wax.yaml',
    shownOn: ['articles/melt-wax'],
    rival: [
      /\b(?:melt|heat|warm)\b.*\bwax\b.*\b(?:on|over) (?:the|a|an) (?:bare |open |low |gas )*(?:stove|burner|flame|fire|ring)\b/i,
      /\b(?:water|hose)\b.*\bon burning wax\b/i,
    ],
    unless: /\b(?:never|not|don't)\b/i,
    stood: ['Elsewhere: Melt the wax over a low flame.', 'Elsewhere: Pour water on burning wax.'],
  },
  {
    danger: 'honey from a hive that was treated with its honey boxes on',
    owner: 'articles/the-flow.mdx',
    shownOn: [],
    rival: [/\btreat(?:ed|ment)\b.*\b(?:honey )?boxes on\b/i],
    unless: /\blabels?\b/i,
    stood: ['Do not sell honey from a hive that was treated or fed with the boxes on. Ask first.'],
  },
];
