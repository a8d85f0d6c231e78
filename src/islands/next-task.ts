/** Ends the task: two short waits are felt less on a slow tablet than a long one, and a touch between them is answered. */
export const nextTask = (): Promise<void> => new Promise((go) => setTimeout(go));
