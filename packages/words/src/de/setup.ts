import type { Words } from '../en.ts'

export const setup: Words['setup'] = {
  owner: 'Inhaber werden',
  ownerWhat: 'Sie haben den Einmal-Link dieser Installation geöffnet. Die Person, die Sie hier eintragen, ist Inhaber der Kette: Betriebe, Leute und alles Weitere richtet der Inhaber ein.',
  back: 'Ein neues Passwort',
  backWhat: 'Sie haben einen Einmal-Link geöffnet, der am Server gemacht wurde. Alle früheren Anmeldungen enden, und mit ihnen Ihr zweiter Faktor.',
  name: 'Ihr Name',
  newPassword: 'Neues Passwort, mindestens 12 Zeichen',
  begin: 'Beginnen',
  noLink: 'Diese Seite öffnet der Link, den der Server ausgibt. Der Link fehlt oder ist abgeschnitten.',
  usedLink: 'Dieser Link wurde schon benutzt, oder ein Tag ist vorbei. Starten Sie den Server neu, oder machen Sie an seiner Konsole einen neuen.',
  factor: 'Zweiter Faktor',
  factorWhat: 'Leiter und Inhaber melden sich zusätzlich mit einem Code aus einer Authenticator-App an. Bis er eingerichtet ist, ruht Ihre Rolle.',
  scan: 'Lesen Sie dies mit der App ein, oder tippen Sie den Schlüssel, und geben Sie dann den Code ein, den sie zeigt.',
  key: 'Schlüssel',
  code: 'Code aus sechs Ziffern',
  keepFactor: 'Behalten',
  wrongCode: 'Das ist nicht der jetzige Code. Geht die Uhr des Geräts richtig?',
  factorStands: 'Ein zweiter Faktor ist schon eingerichtet.',
}
