import type { ReactNode } from 'react'
import { addressPart } from '@/app/address-part'
import { visitProgramme, type Visit } from '@/app/frame/visit'

type Search = Record<string, string | undefined>

interface Asked<P, S> {
  readonly visit: Visit
  /** Of the programme, as it is written. */
  readonly code: string
  /** The other parts of the address, as they were asked. */
  readonly params: P
  readonly searchParams: S
}

/** A page of a programme: who asks is let in, or led elsewhere, before anything else of the request is read. */
export const programmePage =
  <P extends object = object, S extends object = Search>(
    draw: (asked: Asked<P, S>) => ReactNode | Promise<ReactNode>,
  ) =>
  async (page: {
    readonly params: Promise<P & { readonly code: string }>
    readonly searchParams: Promise<S>
  }): Promise<ReactNode> => {
    const params = await page.params
    const visit = await visitProgramme(params.code)
    return draw({ visit, code: visit.view.code, params, searchParams: await page.searchParams })
  }

/** What the browser calls the page, made of the parts of its address. */
export const programmeTitle =
  <P extends Record<string, string>>(titleOf: (params: P & { readonly code: string }) => string) =>
  async (page: { readonly params: Promise<P & { readonly code: string }> }) => {
    const parts = Object.entries(await page.params).map(([name, part]) => [name, addressPart(part)])
    return { title: `${titleOf(Object.fromEntries(parts) as P & { code: string })} – Liquidus` }
  }
