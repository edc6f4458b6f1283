import { defineConfig } from 'prisma/config'

// `prisma generate` would fetch a schema engine that generating never uses; naming any executable stops that download.
process.env.PRISMA_SCHEMA_ENGINE_BINARY ??= process.execPath

export default defineConfig({
  schema: 'prisma/schema.prisma',
  migrations: { path: 'prisma/migrations' },
  datasource: { url: process.env.DATABASE_URL ?? 'postgresql://localhost/evenbore' },
})
