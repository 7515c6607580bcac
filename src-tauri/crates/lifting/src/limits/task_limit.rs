//! The task of a request, put to the published methods.
