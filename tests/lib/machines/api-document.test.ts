import { describe, expect, test } from 'vitest'
import { apiDocument } from '@/lib/machines/api-document'
import { CHARACTERISTICS } from '@/shared/records/characteristics'

/** Every reference within a document. */
function referencesIn(value: unknown): string[] {
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) =>
    key === '$ref' && typeof inner === 'string' ? [inner] : referencesIn(inner),
  )
}

/** What a reference such as #/components/schemas/problem leads to (RFC 6901). */
const at = (document: unknown, reference: string): unknown =>
  reference
    .slice(2)
    .split('/')
    .reduce<unknown>((value, key) => (value as Record<string, unknown> | undefined)?.[key], document)

describe('the description of the interface for machines', () => {
  const document = apiDocument()

  // OpenAPI Specification 3.1.0, section 4.8: what a document, an operation and a response must have.
  test('has what OpenAPI 3.1 asks of a document', () => {
    expect(document.openapi).toMatch(/^3\.1\.\d+$/)
    expect(document.info).toMatchObject({ title: expect.any(String), version: expect.any(String) })
    const { responses } = document.paths['/api/readings'].post
    for (const response of Object.values(responses)) expect(response.description).not.toBe('')
  })

  test('leads nowhere that is not there', () => {
    const references = referencesIn(document)
    expect(references.length).toBeGreaterThan(Object.keys(CHARACTERISTICS).length)
    for (const reference of references) expect(at(document, reference)).toBeDefined()
  })

  test('describes a reading of every characteristic, with its bounds', () => {
    expect(Object.keys(document.components.schemas).length).toBe(Object.keys(CHARACTERISTICS).length + 1)
    expect(document.components.schemas).toMatchObject({
      'reading-of-flux-density': {
        type: 'object',
        required: ['at', 'densityGPerMl', 'temperatureC'],
        additionalProperties: false,
        properties: { densityGPerMl: { type: 'number', minimum: 0.5, maximum: 2 } },
      },
    })
  })
})
