import { answerFor } from '@/app/find/answer-for'
import { guarded } from '@/app/guard/guarded'
import { nothingMore } from '@/app/guard/rights'

const MOST_A_GROUP = 5

/** What answers a query, for the dialog. What the person may not read the query leaves out. */
export const GET = guarded(nothingMore, async ({ request, person }) => {
  const asked = new URL(request.url).searchParams
  const answer = await answerFor(person, {
    query: asked.get('q'),
    inProgramme: asked.get('in'),
    most: MOST_A_GROUP,
  })
  return Response.json(answer, { headers: { 'cache-control': 'no-store' } })
})
