import type { SheetWords } from '../en/sheet.ts'

export const sheet: SheetWords = {
  page: (page, of) => `Seite ${page} von ${of}`,
  sheetOf: 'Für',
  by: 'Erstellt mit Evenbore',
  advice: 'Eine Meinung aus den Messwerten. Vorschrift des Herstellers, örtliche Regeln und Fachbetrieb gehen vor; es entscheidet, wer am Motor arbeitet.',
  noReadings: 'Noch wurde nichts gemessen.',
  notRead: 'nicht gemessen',
}
