export const staysOn = 'La pantalla queda encendida mientras esta página está abierta. Eso gasta la batería.';
export const cannot = 'Este navegador no permite que una página mantenga la pantalla encendida.';
export const goesOff = 'La pantalla se apaga como siempre.';
