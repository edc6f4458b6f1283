import Fastify, { type FastifyInstance } from 'fastify'
import pg from 'pg'

/** What ours is held against: Fastify and the driver, with nothing between them. No sign-in, no schemas, no rules. */
export type Bare = { readonly address: string; readonly close: () => Promise<void> }

const INSERT = {
  name: 'bare-insert',
  text: `INSERT INTO bare_reading (id, session_id, body, pressure, taken_at) VALUES ($1, $2, $3, $4, $5)`,
}

/**
 * Two routes: the floor's data from one prepared query, sent as the text that the database made (not even parsed), and one prepared
 * single-row insert of a reading's body.
 */
export async function startBare(databaseUrl: string, floorText: string): Promise<Bare> {
  const pool = new pg.Pool({ connectionString: databaseUrl, max: 10 })
  await pool.query('CREATE TABLE bare_reading (id uuid PRIMARY KEY, session_id uuid NOT NULL, body jsonb NOT NULL, pressure float8, taken_at timestamptz NOT NULL, received_at timestamptz NOT NULL DEFAULT now())')
  await pool.query('CREATE INDEX ON bare_reading (session_id)')
  const app: FastifyInstance = Fastify({ logger: false })
  const floor = { name: 'bare-floor', text: `SELECT floor::text AS floor FROM (${floorText}) AS one` }

  app.get<{ Params: { garage: string } }>('/floor/:garage', async (request, reply) => {
    const { rows } = await pool.query<{ floor: string }>({ ...floor, values: [request.params.garage] })
    return reply.type('application/json; charset=utf-8').send(rows[0]?.floor)
  })
  app.put<{ Params: { session: string; reading: string }; Body: { reading: { pressure: { value: number } }; takenAt: string } }>('/sessions/:session/readings/:reading', async (request, reply) => {
    const { session, reading } = request.params
    await pool.query({ ...INSERT, values: [reading, session, JSON.stringify(request.body.reading), request.body.reading.pressure.value, request.body.takenAt] })
    return reply.code(201).send({ id: reading })
  })
  const address = await app.listen({ port: 0, host: '127.0.0.1' })
  return {
    address,
    close: async () => {
      await app.close()
      await pool.end()
    },
  }
}
