/** What only sheets made by the server say. */
export const sheet = {
  page: (page: number, of: number) => `Page ${page} of ${of}`,
  sheetOf: 'For',
  by: 'Made by Evenbore',
  advice: 'An opinion from the readings. The maker’s procedure, local codes and licensed practice come first; the technician decides.',
  noReadings: 'Nothing has been read yet.',
  notRead: 'not read',
}
export type SheetWords = typeof sheet
