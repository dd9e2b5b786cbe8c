import type { NotLetIn } from '@/app/guard/refused-answer'
import type { Rights } from '@/app/guard/rights'
import { unfitToSend } from '@/app/forms/submit'
import { signedIn, type SignedIn } from '@/lib/auth/session'
import type { FileReader } from '@/lib/evidence/reached-file'
import type { NameWithoutSubject } from '@/shared/commands/all-faces'

/** Who imports, and into what: they may, which is decided before anything of a file is read. */
export interface Importer<Into> {
  readonly person: SignedIn
  readonly into: Into
  /** Whose file it has to be. */
  readonly reader: FileReader
}

/** Something that readings are imported into: by which command, who may, and whose its files are. */
export interface ImportPlace<Params, Into> {
  readonly command: NameWithoutSubject
  readonly rights: Rights<Params, Into>
  /** The parts of the address, as the form names them. */
  readonly paramsIn: (form: FormData) => Params
  /** The trail that its files belong to. */
  readonly trailIdOf: (into: Into) => string
}

export const importerFor = <Params, Into>(
  { trailIdOf }: Pick<ImportPlace<Params, Into>, 'trailIdOf'>,
  person: SignedIn,
  into: Into,
): Importer<Into> => ({ person, into, reader: { personId: person.personId, trailId: trailIdOf(into) } })

/** The person of this session as importer; or why they are none, in a sentence. */
export async function importerInto<Params, Into>(
  place: ImportPlace<Params, Into>,
  form: FormData,
): Promise<Importer<Into> | { readonly message: string }> {
  const person = await signedIn()
  const unfit = unfitToSend(person)
  if (!person || unfit) return { message: unfit ?? '' }
  const may: { readonly right: Into } | NotLetIn = await place.rights(person, place.paramsIn(form))
  return 'right' in may ? importerFor(place, person, may.right) : { message: may.message }
}
