import type { Words } from '../en.ts'

export const photos: Words['photos'] = {
  title: 'Fotos',
  take: 'Foto aufnehmen',
  choose: 'Bild auswählen',
  of: 'Foto zu',
  none: 'Ein Foto gehört zu einem Messwert: erst einen erfassen.',
  alt: (what, number) => `${what}, Foto ${number}`,
  enlarge: (what) => `Vergrößern: ${what}`,
  kept: (what) => `Foto erfasst: ${what}`,
  waiting: 'noch nicht gesendet',
  missing: 'Gerade kein Bild hier',
  bad: 'Das ist kein Bild, das sich hier lesen lässt. Erwartet wird JPEG oder PNG.',
  tooLarge: (megabytes) => `Die Datei ist größer als ${megabytes} MB.`,
  most: (count) => `Mehr als ${count} Fotos darf ein Messwert nicht haben.`,
  withdraw: 'Dieses Foto zurücknehmen',
  withdrawn: (reason) => `Foto zurückgenommen: „${reason}“`,
  before: 'Foto davor',
  after: 'Foto danach',
}
