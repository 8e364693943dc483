// Renders public/icon.svg as the PNG icons that phones request. Run by hand when the icon changes: `node scripts/icons.ts`.
import { join } from 'node:path';
import sharp from 'sharp';
import { projectFolder } from '../src/cli/paths.ts';

const paper = '#faf7ee';
for (const size of [180, 192, 512]) {
  // A phone may crop it to a circle, so the drawing stays within four fifths.
  const drawn = Math.round(size * 0.8);
  const edge = Math.floor((size - drawn) / 2);
  await sharp(join(projectFolder, 'public', 'icon.svg'), { density: 72 * (drawn / 40) })
    .resize(drawn, drawn)
    .extend({ top: edge, left: edge, right: size - drawn - edge, bottom: size - drawn - edge, background: paper })
    .flatten({ background: paper })
    .png({ palette: true, compressionLevel: 9 })
    .toFile(join(projectFolder, 'public', `icon-${size}.png`));
}
