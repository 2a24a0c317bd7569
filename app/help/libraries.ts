export interface Library {
  /** As in package.json; `text` is where its licence lies. */
  readonly key: string
  readonly name: string
  readonly does: string
  readonly licence: string
}

/** The open-source work that runs in the page. */
export const LIBRARIES: readonly Library[] = [
  { key: 'react', name: 'react', does: 'the page', licence: 'MIT' },
  { key: 'react-dom', name: 'react-dom', does: 'the page', licence: 'MIT' },
  { key: 'reactflow', name: '@xyflow/react', does: 'the canvas', licence: 'MIT' },
  { key: 'zustand', name: 'zustand', does: 'state', licence: 'MIT' },
  { key: 'radix-ui', name: 'radix-ui', does: 'menus and dialogs', licence: 'MIT' },
  { key: 'lucide-react', name: 'lucide-react', does: 'icons', licence: 'ISC' },
  { key: 'zod', name: 'zod', does: 'checks files', licence: 'MIT' },
  { key: 'idb', name: 'idb', does: 'the browser’s database', licence: 'ISC' },
  { key: 'jspdf', name: 'jspdf', does: 'PDF', licence: 'MIT' },
  { key: 'fflate', name: 'fflate', does: 'workbooks, revisions', licence: 'MIT' },
  {
    key: '@expo-google-fonts/ibm-plex-sans',
    name: 'IBM Plex Sans',
    does: 'typeface',
    licence: 'OFL-1.1, packaged under MIT',
  },
  {
    key: '@expo-google-fonts/ibm-plex-sans-condensed',
    name: 'IBM Plex Sans Condensed',
    does: 'typeface',
    licence: 'OFL-1.1, packaged under MIT',
  },
]

const texts = import.meta.glob<string>(
  [
    '../../node_modules/{react,react-dom,reactflow,zustand,radix-ui,lucide-react,zod,idb,jspdf,fflate}/LICENSE*',
    '../../node_modules/@expo-google-fonts/{ibm-plex-sans,ibm-plex-sans-condensed}/LICENSE*',
  ],
  { query: '?raw', import: 'default' },
)

/** The licences of a library in full, as its package carries them. */
export async function licenceText(key: string): Promise<string> {
  const mine = Object.entries(texts).filter(([path]) => path.startsWith(`../../node_modules/${key}/`))
  return (await Promise.all(mine.map(([, load]) => load()))).join('\n\n')
}
