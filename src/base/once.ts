/** What is made of an object once, and kept for as long as that object lives. */
export function oncePer<Key extends object, Made>(make: (key: Key) => Made): (key: Key) => Made {
  const made = new WeakMap<Key, { value: Made }>();
  return (key) => {
    const known = made.get(key);
    if (known) return known.value;
    const value = make(key);
    made.set(key, { value });
    return value;
  };
}
