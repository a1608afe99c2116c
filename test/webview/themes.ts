/** A kind of theme: the class that the editor sets on the page, and its values of the colours in use. */
export interface Theme {
  readonly name: string
  readonly classes: string
  readonly colours: Readonly<Record<string, string>>
}

/** Values of the editor's own themes of each kind (from memory). */
export const THEMES: readonly Theme[] = [
  {
    name: 'dark',
    classes: 'vscode-dark',
    colours: {
      'editor-background': '#1f1f1f',
      'editor-foreground': '#cccccc',
      descriptionForeground: '#9d9d9d',
      focusBorder: '#0078d4',
      'charts-orange': '#d18616',
      'charts-blue': '#59a4f9',
      'charts-green': '#89d185',
      'editorError-foreground': '#f85149',
      errorForeground: '#f85149',
      'toolbar-hoverBackground': '#5a5d5e50',
      'dropdown-background': '#313131',
      'dropdown-foreground': '#cccccc',
    },
  },
  {
    name: 'light',
    classes: 'vscode-light',
    colours: {
      'editor-background': '#ffffff',
      'editor-foreground': '#3b3b3b',
      descriptionForeground: '#3b3b3b',
      focusBorder: '#005fb8',
      'charts-orange': '#d18616',
      'charts-blue': '#0063d3',
      'charts-green': '#388a34',
      'editorError-foreground': '#e51400',
      errorForeground: '#f85149',
      'toolbar-hoverBackground': '#b8b8b850',
      'dropdown-background': '#ffffff',
      'dropdown-foreground': '#3b3b3b',
    },
  },
  {
    name: 'high contrast dark',
    classes: 'vscode-high-contrast',
    colours: {
      'editor-background': '#000000',
      'editor-foreground': '#ffffff',
      descriptionForeground: '#ffffffb3',
      focusBorder: '#f38518',
      contrastBorder: '#6fc3df',
      'charts-orange': '#ab5a00',
      'charts-blue': '#59a4f9',
      'charts-green': '#89d185',
      errorForeground: '#f48771',
      'dropdown-background': '#000000',
      'dropdown-foreground': '#ffffff',
    },
  },
  {
    name: 'high contrast light',
    classes: 'vscode-high-contrast vscode-high-contrast-light',
    colours: {
      'editor-background': '#ffffff',
      'editor-foreground': '#292929',
      descriptionForeground: '#292929b3',
      focusBorder: '#006bbd',
      contrastBorder: '#0f4a85',
      'charts-orange': '#0f4a85',
      'charts-blue': '#0063d3',
      'charts-green': '#374e06',
      errorForeground: '#b5200d',
      'dropdown-background': '#ffffff',
      'dropdown-foreground': '#292929',
    },
  },
]
