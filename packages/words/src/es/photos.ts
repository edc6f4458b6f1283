import type { Words } from '../en.ts'

export const photos: Words['photos'] = {
  title: 'Fotos',
  take: 'Hacer una foto',
  choose: 'Elegir una imagen',
  of: 'Foto de',
  none: 'Una foto pertenece a una lectura: guarde una primero.',
  alt: (what, number) => `${what}, foto ${number}`,
  enlarge: (what) => `Ampliar: ${what}`,
  kept: (what) => `Foto guardada: ${what}`,
  waiting: 'sin enviar todavía',
  missing: 'Ahora no hay imagen aquí',
  bad: 'No es una imagen que se pueda leer aquí. Se espera JPEG o PNG.',
  tooLarge: (megabytes) => `El archivo pasa de ${megabytes} MB.`,
  most: (count) => `Una lectura no puede tener más de ${count} fotos.`,
  withdraw: 'Retirar esta foto',
  withdrawn: (reason) => `Foto retirada: «${reason}»`,
  before: 'Foto anterior',
  after: 'Foto siguiente',
}
