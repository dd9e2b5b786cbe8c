import { logAddress } from '@/app/addresses'
import { receiveCsv } from '@/app/imports/receive-csv'

interface Place {
  params: Promise<{ code: string; log: string }>
}

export async function POST(request: Request, { params }: Place): Promise<Response> {
  const { code, log } = await params
  const back = logAddress(code, log)
  return receiveCsv(
    request,
    code,
    'add-readings',
    back,
    (file) => `${back}/import?${new URLSearchParams({ file })}`,
  )
}
