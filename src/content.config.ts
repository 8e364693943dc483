import { defineCollection } from 'astro:content';
import { contentFolder, picturesFolder } from './lib/settings.ts';
import { picturesOf } from './pictures/loader.ts';
import { entriesOf } from './source/loader.ts';
import { club } from './schemas/club.ts';
import { collections as kinds } from './schemas/collections.ts';

const collection = (name: keyof typeof kinds) => defineCollection({ loader: entriesOf(contentFolder, name), schema: kinds[name].schema });

export const collections = {
  club: defineCollection({ loader: entriesOf(contentFolder, 'club'), schema: club }),
  checklists: collection('checklists'),
  bulletins: collection('bulletins'),
  articles: collection('articles'),
  meetings: collection('meetings'),
  reading: collection('reading'),
  treatments: collection('treatments'),
  forage: collection('forage'),
  words: collection('words'),
  figures: collection('figures'),
  sources: collection('sources'),
  cautions: collection('cautions'),
  signs: collection('signs'),
  notices: collection('notices'),
  counts: collection('counts'),
  drawings: collection('drawings'),
  pictures: defineCollection({ loader: picturesOf(contentFolder, picturesFolder) }),
};
