import { z } from 'zod'
import { CHARACTERISTICS } from '@/shared/records/characteristics'
import type { Characteristic } from '@/shared/records/characteristic'
import { CALLS_AT_ONCE, CALLS_PER_SECOND } from './call-rate'
import { LARGEST_BODY_BYTES, MAX_READINGS_A_CALL, pushEnvelope, readingSchema } from './push-schema'

const stored = z.strictObject({
  log: z.string(),
  readings: z.number().int().describe('How many were stored.'),
  trailEntry: z.number().int().describe('The entry of the machine’s trail that records it.'),
})

const problem = z.object({
  title: z.string(),
  status: z.number().int(),
  detail: z.string().describe('What is wrong and what to do, in a sentence.'),
  problems: z.record(z.string(), z.string()).optional().describe('By the path of what is wrong.'),
})

/** The interface for machines in the OpenAPI 3.1 form, made from the schemas that calls are held to. */
export function apiDocument() {
  const readings = Object.entries(CHARACTERISTICS).map(([key, characteristic]: [string, Characteristic]) => ({
    name: `reading-of-${key}`,
    schema: {
      title: `A reading of ${characteristic.label}`,
      description: characteristic.help,
      ...asJsonSchema(readingSchema(characteristic)),
    },
  }))
  const { properties, ...call } = asJsonSchema(pushEnvelope) as { properties: Record<string, object> }
  return {
    openapi: '3.1.0',
    info: {
      title: 'Liquidus: readings from machines',
      version: '1',
      description: 'A machine adds readings to a log of its own. All readings of a call are stored, or none.',
    },
    servers: [{ url: '/' }],
    security: [{ machineToken: [] }],
    paths: {
      '/api/readings': {
        post: {
          operationId: 'addReadings',
          summary: 'Add readings to a log',
          description: `At most ${MAX_READINGS_A_CALL} readings and ${LARGEST_BODY_BYTES / 1024} KiB a call; ${CALLS_AT_ONCE} calls at once, then ${CALLS_PER_SECOND} a second.`,
          parameters: [
            {
              name: 'Idempotency-Key',
              in: 'header',
              required: false,
              description:
                'The same key stores once, however often it is sent. Without it, the same content stores once.',
              schema: { type: 'string', minLength: 1, maxLength: 200 },
            },
          ],
          requestBody: {
            required: true,
            content: {
              'application/json': {
                schema: {
                  ...call,
                  properties: {
                    ...properties,
                    readings: {
                      ...properties['readings'],
                      items: {
                        anyOf: readings.map(({ name }) => ({ $ref: `#/components/schemas/${name}` })),
                      },
                      description: 'Each as the log’s characteristic asks.',
                    },
                  },
                },
              },
            },
          },
          responses: {
            '200': {
              description: 'All readings are stored.',
              content: { 'application/json': { schema: asJsonSchema(stored) } },
            },
            ...Object.fromEntries(
              Object.entries(REFUSALS).map(([status, description]) => [
                status,
                {
                  description,
                  content: {
                    'application/problem+json': { schema: { $ref: '#/components/schemas/problem' } },
                  },
                },
              ]),
            ),
          },
        },
      },
    },
    components: {
      securitySchemes: {
        machineToken: {
          type: 'http',
          scheme: 'bearer',
          description: 'Made on the machine’s page, and shown there once.',
        },
      },
      schemas: {
        ...Object.fromEntries(readings.map(({ name, schema }) => [name, schema])),
        problem: asJsonSchema(problem),
      },
    },
  }
}

/** Why a call stored nothing. */
const REFUSALS = {
  '400': 'Something in the call is wrong; every fault by its path.',
  '401': 'No token, or one that is not known or was stopped.',
  '404': 'The token’s machine has no such log.',
  '409': 'The works refuse it; the sentence says why.',
  '413': 'The call is too large.',
  '415': 'The call is not JSON.',
  '429': 'Too many calls; Retry-After says how many seconds to wait.',
} as const

/** OpenAPI 3.1 takes JSON Schema as it is; a schema within it needs no `$schema` of its own. */
function asJsonSchema(schema: z.ZodType): object {
  const { $schema: _dialect, ...rest } = z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' })
  return rest
}
