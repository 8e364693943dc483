export const limits = [
  'Sirve para encontrar un ácaro. Cuántos hay lo dice el conteo de ácaros.',
  'No encontrar un ácaro no es no tener ácaros: al lado está la probabilidad de no verlos.',
  'Los ácaros se juntan. Una colonia no habla por la de al lado.',
  'Los ácaros bajo las tapas de cera no están en la muestra.',
  'Una taza es una medida aproximada. Muestras que debían ser de 300 abejas tenían, al contarlas, {counted}.',
  'No sirve para la loque ni para otra enfermedad de declaración obligatoria. Pregunte al inspector apícola.',
];
