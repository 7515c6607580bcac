//! A server in a thread, and requests to it in plain bytes.

use std::io::{Read, Write};
use std::net::{SocketAddr, TcpStream};
use std::sync::Arc;
use std::sync::mpsc;
use std::time::Duration;

use headless::Handed;
use headless::web::{Answering, Server};

/// Repeats every command, and says what was handed in.
fn repeating() -> Answering {
    Answering {
        answer: Arc::new(str::to_owned),
        take: Arc::new(|handed| match handed {
            Handed::Json(body) => String::from_utf8_lossy(body).into_owned(),
            Handed::Raw {
                kind,
                width,
                height,
                bytes,
            } => format!("{kind} {width}x{height} {}", bytes.len()),
        }),
    }
}

/// Somebody who talks to a server that repeats every command it is given.
pub(crate) struct Visitor {
    pub(crate) address: SocketAddr,
    pub(crate) port: u16,
    pub(crate) cookie: Option<String>,
    opening: String,
}

impl Visitor {
    /// Has only the opening address.
    pub(crate) fn new() -> Self {
        let (send, receive) = mpsc::channel();
        std::thread::spawn(move || {
            let runtime = tokio::runtime::Builder::new_current_thread()
                .enable_all()
                .build()
                .unwrap();
            runtime.block_on(async move {
                let server = Server::bind(repeating()).await.unwrap();
                send.send(server.opening_address()).unwrap();
                server.serve().await.unwrap();
            });
        });
        let opening: String = receive.recv().unwrap();
        let (host, path) = opening
            .strip_prefix("http://")
            .unwrap()
            .split_once('/')
            .unwrap();
        let address: SocketAddr = host.parse().unwrap();
        Self {
            address,
            port: address.port(),
            cookie: None,
            opening: format!("/{path}"),
        }
    }

    /// Has been let in.
    pub(crate) fn inside() -> Self {
        let mut visitor = Self::new();
        let reply = visitor.say(&visitor.opening_visit());
        let cookie = reply
            .header("set-cookie")
            .unwrap()
            .split(';')
            .next()
            .unwrap();
        visitor.cookie = Some(cookie.to_owned());
        visitor
    }

    /// The first visit.
    pub(crate) fn opening_visit(&self) -> Visit {
        Visit::get(&self.opening)
    }

    /// A command as our own page sends it.
    pub(crate) fn command(&self, body: &str) -> Visit {
        Visit {
            method: "POST",
            path: "/command".to_owned(),
            origin: vec![format!("http://127.0.0.1:{}", self.port)],
            kind: Some("application/json".to_owned()),
            cookie: self.cookie.clone(),
            body: body.as_bytes().to_vec(),
            ..Visit::get("/command")
        }
    }

    /// Bytes as our own page hands them in: a frame of 2 by 3 grey pixels.
    pub(crate) fn frame(&self) -> Visit {
        Visit {
            path: "/take".to_owned(),
            kind: Some("application/octet-stream".to_owned()),
            ..self.command("abcdef")
        }
        .with("x-kind", "frame")
        .with("x-width", "2")
        .with("x-height", "3")
    }

    /// Sends one request on a connection of its own.
    pub(crate) fn say(&self, visit: &Visit) -> Reply {
        let mut stream = TcpStream::connect(self.address).unwrap();
        stream
            .set_read_timeout(Some(Duration::from_secs(20)))
            .unwrap();
        let (head, body) = visit.bytes(self.port);
        stream.write_all(&head).unwrap();
        // A refused body may never be read: the server answers and hangs up.
        let _ = stream.write_all(&body);
        let mut bytes = Vec::new();
        let _ = stream.read_to_end(&mut bytes);
        Reply::read(&String::from_utf8_lossy(&bytes))
    }
}

/// One request; every part can be bent.
pub(crate) struct Visit {
    pub(crate) method: &'static str,
    pub(crate) path: String,
    /// The word `OURS` stands for the server's own.
    pub(crate) host: Vec<String>,
    pub(crate) origin: Vec<String>,
    pub(crate) kind: Option<String>,
    pub(crate) cookie: Option<String>,
    pub(crate) more: Vec<(&'static str, String)>,
    pub(crate) body: Vec<u8>,
    pub(crate) chunked: bool,
}

impl Visit {
    pub(crate) fn get(path: &str) -> Self {
        Self {
            method: "GET",
            path: path.to_owned(),
            host: vec!["OURS".to_owned()],
            origin: vec![],
            kind: None,
            cookie: None,
            more: vec![],
            body: vec![],
            chunked: false,
        }
    }

    pub(crate) fn with(mut self, name: &'static str, value: &str) -> Self {
        self.more.push((name, value.to_owned()));
        self
    }

    fn bytes(&self, port: u16) -> (Vec<u8>, Vec<u8>) {
        let mut head = format!(
            "{} {} HTTP/1.1\r\nconnection: close\r\n",
            self.method, self.path
        );
        for host in &self.host {
            let host = if host == "OURS" {
                format!("127.0.0.1:{port}")
            } else {
                host.clone()
            };
            head += &format!("host: {host}\r\n");
        }
        for origin in &self.origin {
            head += &format!("origin: {origin}\r\n");
        }
        let named = [("content-type", &self.kind), ("cookie", &self.cookie)];
        for (name, value) in named
            .into_iter()
            .filter_map(|(name, value)| Some((name, value.as_ref()?)))
        {
            head += &format!("{name}: {value}\r\n");
        }
        for (name, value) in &self.more {
            head += &format!("{name}: {value}\r\n");
        }
        let mut body = Vec::new();
        if self.chunked {
            head += "transfer-encoding: chunked\r\n";
            for chunk in self.body.chunks(1000) {
                body.extend_from_slice(format!("{:x}\r\n", chunk.len()).as_bytes());
                body.extend_from_slice(chunk);
                body.extend_from_slice(b"\r\n");
            }
            body.extend_from_slice(b"0\r\n\r\n");
        } else {
            head += &format!("content-length: {}\r\n", self.body.len());
            body.clone_from(&self.body);
        }
        head += "\r\n";
        (head.into_bytes(), body)
    }
}

/// What came back.
pub(crate) struct Reply {
    pub(crate) status: u16,
    pub(crate) body: String,
    headers: Vec<(String, String)>,
}

impl Reply {
    fn read(text: &str) -> Self {
        let (head, body) = text
            .split_once("\r\n\r\n")
            .unwrap_or_else(|| panic!("no reply: {text:?}"));
        let mut lines = head.lines();
        let status = lines
            .next()
            .unwrap()
            .split(' ')
            .nth(1)
            .unwrap()
            .parse()
            .unwrap();
        let headers = lines
            .filter_map(|line| line.split_once(": "))
            .map(|(name, value)| (name.to_ascii_lowercase(), value.to_owned()))
            .collect();
        Self {
            status,
            body: body.to_owned(),
            headers,
        }
    }

    pub(crate) fn header(&self, name: &str) -> Option<&str> {
        self.headers
            .iter()
            .find(|(known, _)| known == name)
            .map(|(_, value)| value.as_str())
    }
}
