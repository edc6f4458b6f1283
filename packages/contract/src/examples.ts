import { EVIDENCE_EXAMPLES } from './examples-evidence.ts'
import { RECORD_EXAMPLES } from './examples-records.ts'

/**
 * An example of every body that a request can have, by the id of its schema: shown in the published document, and changed field by field
 * in the test of bad input. A test checks each against its schema.
 */
export const BODY_EXAMPLES: Readonly<Record<string, unknown>> = { ...RECORD_EXAMPLES, ...EVIDENCE_EXAMPLES }
