import { describeOversize } from '../core/model/oversize.ts';
import { Unreadable } from '../core/model/raw.ts';
import type { HandedFile } from '../worker/protocol.ts';

/** A copy in memory: the file on disk may change or go while it is in use. Throws `Unreadable` when it is already gone, or too large. */
export async function holdFile({ name, data }: HandedFile): Promise<HandedFile> {
  const sentence = describeOversize(data.size, name);
  if (sentence !== undefined) throw new Unreadable(sentence);
  try {
    return { name, data: new Blob([await data.arrayBuffer()]) };
  } catch {
    throw new Unreadable(`“${name}” could not be read from the disk: pick the file again.`);
  }
}
