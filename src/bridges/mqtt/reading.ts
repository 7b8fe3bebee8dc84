/**
 * What a leave-in thermometer publishes: a bare number, a number with its unit, or JSON with the
 * number somewhere inside, named by a singular JSONPath query (RFC 9535, section 2.3.5.1).
 */

export interface PublishedReading {
  temperature: number;
  unit?: 'F' | 'C' | undefined;
}

/**
 * The steps of a query such as `$.probes[0].core` or `$['core temp']`; undefined when it is none.
 */
export function pathOf(query: string): (string | number)[] | undefined {
  const whole = query.startsWith('$') ? query.slice(1) : `.${query}`;
  const step = /\.([\p{L}_][\p{L}\p{N}_-]*)|\[(-?\d{1,6})\]|\['([^'\\]*)'\]|\["([^"\\]*)"\]/uy;
  const steps: (string | number)[] = [];
  while (step.lastIndex < whole.length) {
    const match = step.exec(whole);
    if (!match) return undefined;
    const [, dotted, index, single, double] = match;
    steps.push(index === undefined ? (dotted ?? single ?? double ?? '') : Number(index));
  }
  return steps;
}

/**
 * The reading in a payload, or undefined: a thermometer that is off says so in words of its own.
 */
export function readingIn(
  payload: string,
  path: readonly (string | number)[],
): PublishedReading | undefined {
  const plain = numberIn(payload);
  if (plain && path.length === 0) return plain;
  let value: unknown;
  try {
    value = JSON.parse(payload);
  } catch {
    return undefined;
  }
  const found = path.reduce(at, value);
  const unit = isObject(value) ? unitIn(value.unit) : undefined;
  const reading = numberIn(found) ?? (isObject(found) ? inObject(found) : undefined);
  return reading && { temperature: reading.temperature, unit: reading.unit ?? unit };
}

function inObject(value: Record<string, unknown>): PublishedReading | undefined {
  for (const name of ['temperature', 'value', 'celsius', 'fahrenheit']) {
    const reading = numberIn(value[name]);
    if (reading)
      return {
        temperature: reading.temperature,
        unit: reading.unit ?? unitIn(value.unit) ?? unitIn(name),
      };
  }
  return undefined;
}

function numberIn(value: unknown): PublishedReading | undefined {
  if (typeof value === 'number' && Number.isFinite(value)) return { temperature: value };
  if (typeof value !== 'string') return undefined;
  const match = /^\s*([+-]?\d{1,4}(?:\.\d{1,12})?)\s*(?:°?\s*([CF]))?\s*$/i.exec(value);
  return match ? { temperature: Number(match[1]), unit: unitIn(match[2]) } : undefined;
}

/** `°C`, `C`, `celsius` and their like. */
export function unitIn(value: unknown): 'F' | 'C' | undefined {
  const word = typeof value === 'string' ? value.trim().replace(/^°\s*/, '').toLowerCase() : '';
  if (word === 'c' || word === 'celsius') return 'C';
  return word === 'f' || word === 'fahrenheit' ? 'F' : undefined;
}

function at(value: unknown, step: string | number): unknown {
  if (Array.isArray(value)) return typeof step === 'number' ? value.at(step) : undefined;
  return isObject(value) && typeof step === 'string' && Object.hasOwn(value, step)
    ? value[step]
    : undefined;
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
