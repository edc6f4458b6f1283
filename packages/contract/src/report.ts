import { z } from 'zod'
import { idSchema } from './basics.ts'

/** How often the diagnosis was right, by the chain's own findings. */
export const reliabilitySchema = z
  .strictObject({
    garage: idSchema.nullable(),
    findings: z.int(),
    topOne: z.number().nullable().meta({ description: 'share of findings that were the leading explanation' }),
    topTwo: z.number().nullable(),
    logLoss: z.number().nullable(),
    bins: z.array(z.strictObject({ from: z.number(), to: z.number(), count: z.int(), believed: z.number().nullable(), found: z.number().nullable() })),
    overrides: z.strictObject({ declined: z.int(), turnedOutRight: z.int() }),
  })
  .meta({ id: 'Reliability' })

export type Reliability = z.infer<typeof reliabilitySchema>
