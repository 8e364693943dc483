export const limits = [
  'Habla de las colonias en que se contó. Cuente en {colonies} colonias o más.',
  'Los ácaros bajo las tapas de cera no están en la muestra.',
  'Una taza es una medida aproximada. Muestras que debían ser de 300 abejas tenían, al contarlas, {counted}.',
  'Ninguna manera de contar encuentra todos los ácaros. Una prueba del azúcar en polvo encontró el {roll}; un lavado con centrífuga, más del {wash}.',
  'Una lámina adhesiva mide otra cosa: nunca la compare con estos niveles.',
  'En otoño también llegan ácaros de fuera: {arriving} a una sola colonia.',
  'No nombra ningún tratamiento. Eso lo decide la etiqueta de su envase.',
];
