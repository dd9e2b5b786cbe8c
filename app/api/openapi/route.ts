import { openToAll } from '@/app/guard/open-to-all'
import { apiDocument } from '@/lib/machines/api-document'

/** What machines may send, in the OpenAPI 3.1 form. */
export const GET = openToAll('It tells nothing of any programme.', () => Response.json(apiDocument()))
