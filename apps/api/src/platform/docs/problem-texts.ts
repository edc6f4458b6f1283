import type { ProblemCode } from '@evenbore/contract'

/** For each problem type: when it is answered, and what to do. A page of the documentation each. */
export const PROBLEM_TEXTS: Readonly<Record<ProblemCode, { readonly when: string; readonly do: string }>> = {
  'invalid-request': { when: 'The body is no JSON, or a field is missing, unknown, of the wrong type or out of range.', do: 'Read `errors`: each entry has the path of the field, what was expected and what was got.' },
  'invalid-case': { when: 'A case sent for evaluation or comparison does not fit the contract.', do: 'Read `errors`; the command line answers the same document for the same case.' },
  'not-signed-in': { when: 'The request has no access token, or one that has run out or was ended.', do: 'Sign in, or renew the access token with the refresh token, and send the request again.' },
  'wrong-credentials': { when: 'E-mail and password, name and PIN, code, link, refresh token or client secret do not fit. Which of them is not said.', do: 'Check them. Some wrong attempts in a row lock the sign-in for a while.' },
  'second-factor-needed': { when: 'A manager or an owner signs in without the one-time code of the authenticator, or with a wrong one.', do: 'Send `oneTimeCode` with six digits as well.' },
  'locked-out': { when: 'Too many wrong passwords or PINs came in a row for this person or on this tablet.', do: 'Wait as long as Retry-After says.' },
  'not-allowed': { when: 'You are known, but your role, or the scopes of your app, do not allow this here.', do: 'Ask somebody whose role does; who may do what stands beside each route.' },
  'own-quote': { when: 'A quote was to be approved by the person who wrote it.', do: 'Let another manager or an owner look at it.' },
  'above-limit': { when: 'The total with tax is above what this manager may approve.', do: 'Ask an owner.' },
  'not-found': { when: 'There is no such record, or it belongs to a garage that you do not work for.', do: 'Check the id.' },
  'method-not-allowed': { when: 'The path exists, but does not take this method.', do: 'Use one of those in Allow.' },
  'conflict': { when: 'Another record stands in the way, such as a job in the same bay.', do: 'Read `detail`, then the other record.' },
  'session-closed': { when: 'A live reading was sent into a session that is closed.', do: 'Open a new session. A reading made while offline is sent with `offline`, and is kept as unplaced.' },
  'id-reused': { when: 'A reading id or an Idempotency-Key came again, with another body.', do: 'Make a new id for a new record; send the same body to repeat the same request.' },
  'already-replaced': { when: 'A correction names a reading or a finding that another correction replaced before.', do: 'Read the record again and correct its newest form.' },
  'wrong-state': { when: 'The job does not stand where this step is possible.', do: 'Read `detail`: it says where the job stands and what it waits for.' },
  'stale': { when: 'The record was changed after you had read it.', do: 'Read it again and make your change on top.' },
  'too-large': { when: 'The body is larger than one mebibyte.', do: 'Send less at once.' },
  'unsupported-media': { when: 'The body has a media type that this path does not read.', do: 'Send application/json; /v1/token also reads application/x-www-form-urlencoded.' },
  'if-match-needed': { when: 'An edit came without the version that it is based on.', do: 'Send If-Match with the ETag of the record as you read it.' },
  'idempotency-key-needed': { when: 'An action that makes money or permission came without an Idempotency-Key.', do: 'Send one of 8 to 200 characters; the same key gets the same answer.' },
  'too-many-requests': { when: 'More requests came in a minute than /docs/limits says.', do: 'Wait as long as Retry-After says.' },
  'unavailable': { when: 'The service or its database is starting, stopping or out of connections.', do: 'Try again in a few seconds.' },
  'internal': { when: 'A fault of ours.', do: 'Try again; if it stays, tell whoever runs the service the `instance`.' },
}
