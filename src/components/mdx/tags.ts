/*
 * Components of a page's words for <Content components={...} />: the tags that authors write, and those that remark-page and rehype-page
 * make.
 */
import Case from './Case.astro';
import Caution from './Caution.astro';
import Contact from './Contact.astro';
import Day from './Day.astro';
import DoNow from './DoNow.astro';
import Donts from './Donts.astro';
import Drawing from './Drawing.astro';
import Example from './Example.astro';
import FieldTest from './FieldTest.astro';
import Figure from './Figure.astro';
import Fold from './Fold.astro';
import Law from './Law.astro';
import Line from './Line.astro';
import Link from './Link.astro';
import Local from './Local.astro';
import Opening from './Opening.astro';
import Part from './Part.astro';
import Picture from './Picture.astro';
import Plain from './Plain.astro';
import Step from './Step.astro';
import Unseen from './Unseen.astro';

const shared = { Case, Caution, Contact, Day, Drawing, Example, Figure, Line, Local, Picture, Step, a: Link };

/** For a whole page. */
export const tags = { ...shared, Opening, Part, DoNow, Donts, Fold, Law, FieldTest: Unseen };

/** For a text of local/ inside a page: the page draws the cautions. */
export const localTags = { ...shared, Opening: Plain, Part: Plain, FieldTest: Unseen };

/** For a bulletin of which only the field test is shown. */
export const fieldTestTags = {
  ...shared,
  Opening: Unseen,
  Part: Unseen,
  DoNow: Unseen,
  Donts: Unseen,
  Fold: Unseen,
  Law: Unseen,
  FieldTest,
};
