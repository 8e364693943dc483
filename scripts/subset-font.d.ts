declare module 'subset-font' {
  export default function subset(font: Uint8Array, letters: string, options: { targetFormat: 'woff2' }): Promise<Uint8Array>;
}
