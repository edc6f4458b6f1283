import type { SheetWords } from '../en/sheet.ts'

export const sheet: SheetWords = {
  page: (page, of) => `Página ${page} de ${of}`,
  sheetOf: 'Para',
  by: 'Hecho con Evenbore',
  advice: 'Una opinión a partir de las lecturas. El procedimiento del fabricante, las normas locales y la práctica autorizada van primero; decide el técnico.',
  noReadings: 'Todavía no se ha leído nada.',
  notRead: 'sin leer',
}
