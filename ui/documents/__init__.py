"""Documents from summaries: a page (HTML, PDF), a paragraph, tables (CSV), FHIR."""
