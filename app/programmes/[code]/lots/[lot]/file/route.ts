import { lotAddress } from '@/app/addresses'
import { receiveCsv } from '@/app/imports/receive-csv'

interface Place {
  params: Promise<{ code: string; lot: string }>
}

export async function POST(request: Request, { params }: Place): Promise<Response> {
  const { code, lot } = await params
  const address = lotAddress(code, lot)
  const method = new URL(request.url).searchParams.get('method') ?? ''
  return receiveCsv(
    request,
    code,
    'test-lot',
    `${address}?${new URLSearchParams({ method })}`,
    (file) => `${address}/import?${new URLSearchParams({ file, method })}`,
  )
}
