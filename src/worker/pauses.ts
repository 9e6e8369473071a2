/** Work in the background gives way to what the user does after so long. */
const AT_A_TIME_MS = 12;

/** Lets other messages be answered, where the work has been at it long enough. */
export function createPauses(): () => Promise<void> {
  let begun = performance.now();
  return async () => {
    if (performance.now() - begun < AT_A_TIME_MS) return;
    await new Promise((resolve) => setTimeout(resolve));
    begun = performance.now();
  };
}
