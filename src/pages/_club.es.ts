import type * as English from './_club.en.ts';

export const nextMeeting = 'Próxima reunión';
export const allMeetings: typeof English.allMeetings = (count) => (count === 1 ? 'La única reunión' : `Las ${count} reuniones`);
export const whoToCall = 'A quién llamar';
export const howToReach = 'Cómo comunicarse';
export const everyone = 'Todas las personas, por función';
export const files = 'Formularios y archivos';
export const fileKind: typeof English.fileKind = (size) => `PDF, ${size}.`;
export const howFilesOpen =
  'Un archivo se abre en un programa de su propio dispositivo. Después de abrirlo una vez con señal, se abre también sin ella.';
export const readAndLookUp = 'Leer y consultar';
export const settingsAndAbout = 'Ajustes e información';

export const reading: typeof English.reading = ({ articles, words, figures }) => ({
  'know-how/': ['Cómo se hace', `Artículos: ${articles}. Primero la respuesta corta, después las razones.`],
  'year/': ['El año', 'Qué empieza en cada mes.'],
  'words/': ['Palabras', `Palabras del oficio, explicadas con palabras sencillas: ${words}.`],
  'reading/': ['Lecturas', 'Qué vale la pena leer, y qué biblioteca lo presta.'],
  'figures/': ['Cifras', `Cifras: ${figures}. Cada una con sus fuentes, una al lado de la otra.`],
  'counts/': ['Conteos de ácaros de la zona', 'Qué contaron los socios, al lado del nivel para actuar.'],
  'notices/': ['Anuncios temporales', 'Valen solo para ciertos días.'],
  'about/#book': ['El libro', 'Todas las páginas de esta edición en un archivo, para un lector electrónico, una memoria USB o papel.'],
  'sheets/': [
    'Hojas para llenar',
    'Hoja de conformidad, registro de picaduras, visitas, conteos, ficha de la colmena: en blanco, para imprimir.',
  ],
  'card/': ['Tarjeta de bolsillo', 'A quién llamar, niveles, jarabe y enfermedades parecidas en una hoja doblada.'],
  'hall/': [
    'Pantalla de la sala',
    'Para un proyector: lo de ahora, una lista paso a paso, enfermedades parecidas lado a lado, un código para teléfonos.',
  ],
  'hand-out/': ['Hojas para repartir', 'Las páginas que usted elija, en un juego de hojas o en un archivo para el teléfono.'],
  'open/': ['Descargas', 'Las cifras en un archivo para otros programas.'],
});

export const about: Record<keyof typeof English.about, readonly [string, string]> = {
  'about/access/': ['Ajustes de pantalla', 'Mucho sol, noche, letra grande, guantes, su zona y la pantalla de inicio.'],
  'about/': ['Cómo se revisan las páginas', 'Quién las revisa, y qué tan segura es una cifra.'],
  'search/': ['Buscar', 'Encuentre una página por las palabras que contiene.'],
  'withdrawn/': ['Páginas retiradas', 'Qué se retiró, y por qué.'],
};
