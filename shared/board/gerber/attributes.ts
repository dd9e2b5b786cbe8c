import type { ObjectAttributes } from './gerber-layer'

/** The attributes in force while a file is read (specification 5): of the file, the apertures and the objects. */
export class AttributeTable {
  readonly file = new Map<string, readonly string[]>()
  private readonly aperture = new Map<string, readonly string[]>()
  private readonly object = new Map<string, readonly string[]>()
  private current: ObjectAttributes | undefined
  private ofAperture: readonly string[] | undefined

  /** One command, `TF`, `TA`, `TO` or `TD` with its fields; false where it is none. */
  set(block: string): boolean {
    const kind = block.slice(0, 2)
    const [name = '', ...fields] = block.slice(2).split(',').map(unescaped)
    const key = name.replace(/^\./, '')
    this.current = undefined
    switch (kind) {
      case 'TF':
        this.file.set(key, fields)
        return true
      case 'TA':
        this.aperture.set(key, fields)
        return true
      case 'TO':
        this.object.set(key, fields)
        return true
      case 'TD':
        this.forget(key)
        return true
      default:
        return false
    }
  }

  private forget(key: string): void {
    if (key === '') {
      this.aperture.clear()
      this.object.clear()
    } else {
      this.aperture.delete(key)
      this.object.delete(key)
    }
  }

  /** What an aperture defined now is for; it keeps that whatever follows. */
  forNewAperture(): readonly string[] | undefined {
    return this.aperture.get('AperFunction')
  }

  /** What is said of an object drawn now with an aperture that is for this, or of a region. */
  forObject(use: readonly string[] | undefined): ObjectAttributes {
    if (this.current && this.ofAperture === use) return this.current
    const pin = this.object.get('P')
    const component = pin?.[0] ?? this.object.get('C')?.[0]
    const net = this.object.get('N')?.[0]
    this.ofAperture = use
    this.current = {
      ...(net !== undefined && net !== '' && { net }),
      ...(component !== undefined && { component }),
      ...(pin?.[1] !== undefined && { pin: pin[1] }),
      ...(use && { use }),
    }
    return this.current
  }
}

/** `\u00B5` and the like are characters that could not stand there (specification 3.4.3). */
const unescaped = (field: string): string =>
  field.replaceAll(/\\u([0-9a-fA-F]{4})/g, (_, code: string) =>
    String.fromCharCode(Number.parseInt(code, 16)),
  )
