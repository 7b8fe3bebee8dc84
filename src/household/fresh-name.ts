/** A new dinner is called by its day: "2026-12-19", the second of a day "2026-12-19-2". */
export function freshName(date: string, dinners: readonly { id: string }[]): string {
  const taken = new Set(dinners.map((one) => one.id));
  for (let n = 1; ; n += 1) {
    const name = n === 1 ? date : `${date}-${n}`;
    if (!taken.has(name)) return name;
  }
}
