/* Finds the pictures of a collection's pages by their written addresses. */
import type { Collection } from '../schemas/collections.ts';
import type { Almanac } from './content.ts';
import type { RenderContext } from './render-context.ts';

/** For a page of `collection`: its pictures by their written addresses. */
export const picturesBeside = ({ pictures }: Almanac, collection: Collection): Pick<RenderContext, 'picture'> => ({
  picture: (url) => pictures.get(`${collection}/${url}`) ?? null,
});
