import { type Desk, handle } from './handle.ts';
import type { Message } from './protocol.ts';

const desk: Desk = { session: null, upload: new Uint8Array() };
/** One message after the other: an edit waits for the judgement before it. */
let before: Promise<void> = Promise.resolve();

self.onmessage = ({ data }: MessageEvent<Message>) => {
  before = before.then(() => handle(desk, data, (reply, transfer = []) => self.postMessage(reply, { transfer })));
};
