/** What this device remembers of itself. A full or shut storage is no fault of the cook's. */
export interface Keeping {
  get(name: string): string | undefined;
  /** False when it could not be kept. */
  set(name: string, value: string): boolean;
}

export function keepingOn(storage: () => Storage): Keeping {
  return {
    get(name) {
      try {
        return storage().getItem(`roastcall ${name}`) ?? undefined;
      } catch {
        return undefined;
      }
    },
    set(name, value) {
      try {
        storage().setItem(`roastcall ${name}`, value);
        return true;
      } catch {
        return false;
      }
    },
  };
}
