import { lotAddress } from '@/app/addresses'
import { receiveCsv } from '@/app/imports/receive-csv'

interface Place {
  params: Promise<{ code: string; lot: string }>
}

export async function POST(request: Request, { params }: Place): Promise<Response> {
  const { code, lot } = await params
  const back = lotAddress(decodeURIComponent(code), decodeURIComponent(lot))
  return receiveCsv(
    request,
    code,
    'test-lot',
    back,
    (file, fields) =>
      `${back}/import?${new URLSearchParams({ file, method: fields.get('method')?.[0] ?? '' })}`,
  )
}
