import { apiDocument } from '@/lib/machines/api-document'

/** What machines may send, in the OpenAPI 3.1 form. It tells nothing of any programme, so it is open. */
export const GET = (): Response => Response.json(apiDocument())
