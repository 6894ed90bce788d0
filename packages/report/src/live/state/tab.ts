/**
 * This tab's own name, which survives a reload and is unique: a duplicated tab gets a new one.
 *
 * @returns the name, and the one it was copied from
 */
export async function nameOfTab(): Promise<{ tab: string; copiedFrom: string | null }> {
  const known = keptName();
  if (known !== null && (await holdForLife(known))) return { tab: known, copiedFrom: null };
  const tab = Math.random().toString(36).slice(2);
  await holdForLife(tab);
  try {
    sessionStorage.setItem(KEY, tab);
  } catch {
    // A browser that keeps nothing gives a new name at each reload.
  }
  return { tab, copiedFrom: known };
}

/** Names of the tabs that are open; null where the browser cannot tell. */
export async function openTabs(): Promise<ReadonlySet<string> | null> {
  if (!("locks" in navigator)) return null;
  const { held = [] } = await navigator.locks.query();
  return new Set(held.flatMap(({ name }) => (name?.startsWith(KEY) ? [name.slice(KEY.length + 1)] : [])));
}

function keptName(): string | null {
  try {
    return sessionStorage.getItem(KEY);
  } catch {
    return null;
  }
}

/** Holds a name until the tab is closed; false where another tab holds it. */
async function holdForLife(name: string): Promise<boolean> {
  if (!("locks" in navigator)) return true;
  try {
    return await new Promise<boolean>((resolve) => {
      const hold = (lock: Lock | null): Promise<void> | undefined => {
        resolve(lock !== null);
        return lock === null ? undefined : new Promise(() => {});
      };
      navigator.locks.request(`${KEY} ${name}`, { ifAvailable: true }, hold).catch(() => resolve(true));
    });
  } catch {
    return true;
  }
}

const KEY = "warmside tab";
