import { Component, type ReactNode } from 'react'

/** The last resort: the page broke off while drawing. The design is in the browser's database up to the last edit. */
export class Broken extends Component<{ readonly children: ReactNode }, { readonly why: string | null }> {
  override state = { why: null }

  static getDerivedStateFromError(error: unknown) {
    return { why: error instanceof Error ? error.message : String(error) }
  }

  override render() {
    if (this.state.why === null) return this.props.children
    return (
      <main className="broken">
        <h1>The page broke off</h1>
        <p>Your design is kept up to the last edit. Load the page again to go on.</p>
        <p className="quiet">{this.state.why}</p>
        <button type="button" className="main" onClick={() => window.location.reload()}>
          Load again
        </button>
      </main>
    )
  }
}
