import type { Commands } from '../app/commands.ts';
import type { View } from '../app/state.ts';

/** What becomes of files dropped on the page: a list or project is opened, or compared with where that is on show; catalogues are added on their view. */
export async function takeDropped({ dataTransfer }: DragEvent, view: View, commands: Commands): Promise<void> {
  const files = [...(dataTransfer?.files ?? [])].map((file) => ({ name: file.name, data: file }));
  const [first] = files;
  if (!first) return;
  const isProject = /\.json$/i.test(first.name);
  if (view === 'catalogue' && !isProject) await commands.catalogues.add(files);
  else if (view === 'compare') await commands.comparing.withFile(first);
  else await commands.openFile(first);
}
