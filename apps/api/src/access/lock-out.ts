import type { Database } from '../platform/database/database.ts'

/** So many wrong attempts in a row are free; each one after doubles the wait, up to an hour. */
const FREE_ATTEMPTS = 5
const MOST_MINUTES = 60

const WRONG_PERSON = {
  name: 'access-wrong-person',
  text: `UPDATE person SET failed_sign_ins = failed_sign_ins + 1, locked_until = CASE WHEN failed_sign_ins + 1 >= $2
      THEN now() + least($3, power(2, least(failed_sign_ins + 1 - $2, 20))) * interval '1 minute' ELSE locked_until END WHERE id = $1`,
}
const RIGHT_PERSON = { name: 'access-right-person', text: 'UPDATE person SET failed_sign_ins = 0, locked_until = NULL WHERE id = $1 AND failed_sign_ins > 0' }
// A tablet serves several people, so it takes twice as many.
const WRONG_TABLET = {
  name: 'access-wrong-tablet',
  text: `UPDATE tablet SET failed_pins = failed_pins + 1, locked_until = CASE WHEN failed_pins + 1 >= 2 * $2
      THEN now() + least($3, power(2, least(failed_pins + 1 - 2 * $2, 20))) * interval '1 minute' ELSE locked_until END WHERE id = $1`,
}
const RIGHT_TABLET = { name: 'access-right-tablet', text: 'UPDATE tablet SET failed_pins = 0, locked_until = NULL WHERE id = $1 AND failed_pins > 0' }

/** Counts a wrong password or PIN, in the database, so that it counts in every process and after a restart. */
export async function countWrong(database: Database, who: { readonly person?: string; readonly tablet?: string }): Promise<void> {
  if (who.person !== undefined) await database.run(WRONG_PERSON, [who.person, FREE_ATTEMPTS, MOST_MINUTES])
  if (who.tablet !== undefined) await database.run(WRONG_TABLET, [who.tablet, FREE_ATTEMPTS, MOST_MINUTES])
}

/** A right one ends the row of wrong ones. */
export async function countRight(database: Database, who: { readonly person?: string; readonly tablet?: string }): Promise<void> {
  if (who.person !== undefined) await database.run(RIGHT_PERSON, [who.person])
  if (who.tablet !== undefined) await database.run(RIGHT_TABLET, [who.tablet])
}
