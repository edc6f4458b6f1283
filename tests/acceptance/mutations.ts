/** Ways to spoil a body that is as the schema asks, one field at a time. Each says where, and what to expect in the answer. */
export type Mutation = { readonly what: string; readonly pointer: string; readonly body: unknown }

type Schema = {
  readonly $ref?: string; readonly type?: string; readonly properties?: Readonly<Record<string, Schema>>; readonly required?: readonly string[]; readonly items?: Schema; readonly anyOf?: readonly Schema[]; readonly oneOf?: readonly Schema[]
  readonly const?: unknown; readonly enum?: readonly unknown[]; readonly minimum?: number; readonly maximum?: number; readonly exclusiveMinimum?: number; readonly exclusiveMaximum?: number; readonly minLength?: number; readonly maxLength?: number
  readonly pattern?: string; readonly maxItems?: number; readonly minItems?: number; readonly additionalProperties?: boolean | Schema
}
export type Components = Readonly<Record<string, Schema>>
type Path = readonly (string | number)[]
type Place = { readonly path: Path; readonly value: unknown; readonly schema: Schema | undefined }

/** Every field of `example`, spoiled in every way that its schema forbids. */
export function mutationsOf(example: unknown, schema: Schema, components: Components): Mutation[] {
  // A body of which nothing is required may be left out, and JSON null is the same as nothing.
  const optional = (fitting(schema, example, components)?.required ?? []).length === 0
  return placesOf({ path: [], value: example, schema }, components).flatMap((place) => [...wrongTypes(place, components), ...outOfRange(place, components), ...missing(place, components), ...unknown(place, components), ...pressures(place)].map(({ what, path, change }) => ({
    what: `${what} at ${pointerOf(path) || 'the whole'}`, pointer: pointerOf(path), body: changed(example, path, change),
  }))).filter(({ pointer, body }) => !(optional && pointer === '' && body === null))
}

type Spoil = { readonly what: string; readonly path: Path; readonly change: unknown }
const REMOVED = Symbol('removed')

function placesOf(place: Place, components: Components): Place[] {
  const { path, value } = place
  const schema = fitting(place.schema, value, components)
  const inside = Array.isArray(value)
    ? value.slice(0, 2).flatMap((entry, at) => placesOf({ path: [...path, at], value: entry, schema: schema?.items }, components))
    : isObject(value)
      ? Object.entries(value).flatMap(([key, entry]) => placesOf({ path: [...path, key], value: entry, schema: schema?.properties?.[key] ?? (typeof schema?.additionalProperties === 'object' ? schema.additionalProperties : undefined) }, components))
      : []
  return [{ path, value, schema: place.schema }, ...inside]
}

/** A value of a type that no alternative of the schema takes. */
function wrongTypes({ path, value, schema }: Place, components: Components): Spoil[] {
  const taken = new Set(alternatives(schema, components).map(({ type, const: constant }) => type ?? typeof constant))
  if (taken.size === 0 || schema === undefined) return []
  const candidates: [string, unknown][] = [['string', 'words'], ['number', 12.5], ['boolean', true], ['array', []], ['object', {}], ['null', null]]
  const takes = (type: string) => taken.has(type) || (type === 'number' && taken.has('integer'))
  return candidates.filter(([type]) => !takes(type)).map(([type, change]) => ({ what: `${type} for ${value === null ? 'null' : typeof value}`, path, change }))
}

function outOfRange({ path, value, schema }: Place, components: Components): Spoil[] {
  const found = fitting(schema, value, components)
  if (found === undefined) return []
  const spoils: Spoil[] = []
  const add = (what: string, change: unknown) => spoils.push({ what, path, change })
  if (found.minimum !== undefined) add('below the least', found.minimum - 1)
  if (found.maximum !== undefined && found.maximum < Number.MAX_SAFE_INTEGER) add('above the most', found.maximum + 1)
  if (found.exclusiveMinimum !== undefined && found.exclusiveMinimum > -Number.MAX_SAFE_INTEGER) add('at the least that is no more allowed', found.exclusiveMinimum)
  if (found.type === 'integer') add('a fraction', (value as number) + 0.5)
  if (found.enum !== undefined || (found.const !== undefined && typeof found.const === 'string')) add('a word of no list', 'none-of-these')
  if (found.type === 'string' && found.maxLength !== undefined) add('too long', 'x'.repeat(found.maxLength + 1))
  if (found.type === 'string' && (found.minLength ?? 0) > 0) add('empty', '')
  if (found.pattern !== undefined) add('of the wrong form', '\u0000~')
  if (found.maxItems !== undefined && Array.isArray(value) && value.length > 0) add('too many', Array.from({ length: found.maxItems + 1 }, () => value[0] as unknown))
  if ((found.minItems ?? 0) > 0) add('too few', [])
  return spoils
}

function missing({ path, value, schema }: Place, components: Components): Spoil[] {
  const found = isObject(value) ? fitting(schema, value, components) : undefined
  return (found?.required ?? []).filter((key) => isObject(value) && key in value).map((key) => ({ what: 'missing', path: [...path, key], change: REMOVED }))
}

function unknown({ path, value, schema }: Place, components: Components): Spoil[] {
  const found = isObject(value) ? fitting(schema, value, components) : undefined
  return found?.additionalProperties === false ? [{ what: 'unknown field', path: [...path, 'noSuchField'], change: 1 }] : []
}

/** Pressures are limited by their unit, which a schema cannot say. */
function pressures({ path, value }: Place): Spoil[] {
  if (!isObject(value) || !('value' in value) || !('unit' in value)) return []
  return [{ what: 'a pressure of -1', path: [...path, 'value'], change: -1 }, { what: 'a pressure of 10000 psi', path: [...path, 'value'], change: 10_000 }, { what: 'an unknown unit', path: [...path, 'unit'], change: 'mmHg' }]
}

/** The alternative of a schema that this value is of, references followed. */
function fitting(schema: Schema | undefined, value: unknown, components: Components): Schema | undefined {
  const options = alternatives(schema, components)
  return options.find((option) => fits(option, value, components))
}

function fits(option: Schema, value: unknown, components: Components): boolean {
  if (option.const !== undefined) return option.const === value
  if (option.type === 'object') {
    if (!isObject(value) || !(option.required ?? []).every((key) => key in value)) return false
    if (option.additionalProperties === false && Object.keys(value).some((key) => !(key in (option.properties ?? {})))) return false
    return Object.entries(option.properties ?? {}).every(([key, property]) => !(key in value) || alternatives(property, components).some((inner) => (inner.const === undefined || inner.const === value[key]) && (inner.enum === undefined || inner.enum.includes(value[key]))))
  }
  if (option.type === 'array') return Array.isArray(value)
  if (option.type === 'integer' || option.type === 'number') return typeof value === 'number'
  if (option.type === 'null') return value === null
  return option.type === undefined || option.type === typeof value
}

function alternatives(schema: Schema | undefined, components: Components): Schema[] {
  if (schema === undefined) return []
  if (schema.$ref !== undefined) return alternatives(components[schema.$ref.split('/').at(-1)!], components)
  const options = schema.anyOf ?? schema.oneOf
  return options === undefined ? [schema] : options.flatMap((option) => alternatives(option, components))
}

function changed(value: unknown, path: Path, change: unknown): unknown {
  const [head, ...rest] = path
  if (head === undefined) return change
  if (Array.isArray(value)) return value.map((entry, at) => (at === head ? changed(entry, rest, change) : entry))
  const { [head]: entry, ...others } = value as Record<string, unknown>
  const next = changed(entry, rest, change)
  return next === REMOVED ? others : { ...(value as object), [head]: next }
}

function pointerOf(path: Path): string {
  return path.map((key) => `/${key}`).join('')
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
