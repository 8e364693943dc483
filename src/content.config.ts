import { defineCollection } from 'astro:content';
import { asWritten } from './lib/country.ts';
import { contentFolder, picturesFolder } from './lib/settings.ts';
import { picturesOf } from './pictures/loader.ts';
import { entriesOf, offeredIn, originsOf, spokenIn } from './source/loader.ts';
import { club } from './schemas/club.ts';
import { collectionNames, collections as kinds } from './schemas/collections.ts';

export const collections = {
  club: defineCollection({ loader: entriesOf(contentFolder, 'club', asWritten), schema: club }),
  ...Object.fromEntries(
    collectionNames.map((name) => [
      name,
      defineCollection({ loader: entriesOf(contentFolder, name, asWritten), schema: kinds[name].schema }),
    ]),
  ),
  origins: defineCollection({ loader: originsOf(contentFolder) }),
  spoken: defineCollection({ loader: spokenIn(contentFolder) }),
  offered: defineCollection({ loader: offeredIn(contentFolder) }),
  pictures: defineCollection({ loader: picturesOf(contentFolder, picturesFolder) }),
};
