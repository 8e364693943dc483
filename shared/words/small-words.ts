/* Stop words: words on every page that help no search. The index and the queries leave them out. */
export const SMALL_WORDS: ReadonlySet<string> = new Set(
  'a about all also am an and any anybody anyone anything are aren as at be been being but by can cannot cant could couldnt did didnt do does doesnt doing dont each else for friday from get gets getting go goes going got gotten had has have havent having he her hers him his how hows i if im in into is isnt it its ive just know let like me might monday my myself need needed needs of ok on one onto or our ours please really saturday she should shouldnt so some somebody someone something such sunday tell than thanks that thats the their them then there theres these they theyre thing things this those thursday to today tomorrow tonight try trying tuesday us very want wants was wasnt we wednesday were what whats when where wheres whether which who whos why will with wont would wouldnt yes yesterday yet you your youre yours'.split(
    ' ',
  ),
);
