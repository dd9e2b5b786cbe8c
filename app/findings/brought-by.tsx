import { changeNoticeAddress, optionAddress } from '@/app/addresses'

interface BroughtByProps {
  code: string
  /** The change notice, the option study that it came by; neither where it was set by itself. */
  notice?: number | null | undefined
  study?: number | undefined
}

/** Through what a value or a limit came, where it did not come by itself: ", by change notice 3". */
export function BroughtBy({ code, notice, study }: BroughtByProps) {
  return (
    <>
      {notice !== null && notice !== undefined && (
        <>
          {', by '}
          <a href={changeNoticeAddress(code, notice)}>change notice {notice}</a>
        </>
      )}
      {study !== undefined && (
        <>
          {', by '}
          <a href={optionAddress(code, study)}>study {study}</a>
        </>
      )}
    </>
  )
}
